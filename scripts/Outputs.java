import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.sagwise.cli.NoWindow;
import org.sagwise.cli.SagwiseCommand;

/**
 * Writes what every verb answers on every demo and every lesson's bench, in both languages, into a
 * folder: one before a change and one after it tell by {@code diff -r} what the change did.
 *
 * <p>{@code java -cp .sagwise/sagwise.jar scripts/Outputs.java FOLDER}, from the top of a checkout.
 */
public final class Outputs {

    private static final List<String> LANGUAGES = List.of("en", "de");
    private static final List<String> THEMES = List.of("light", "dark", "contrast");
    private static final List<String> DRAWER_VERBS = List.of(
            "list", "add", "measure", "marry", "retire", "remove", "import", "export", "pair", "lay");
    private static final List<String> SIZES = List.of("800x600", "1280x720");

    private final Path folder;

    private Outputs(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Locale.setDefault(Locale.ENGLISH);
        var outputs = new Outputs(Path.of(args[0]));
        for (String language : LANGUAGES) {
            outputs.withoutFile(language);
            List<String> demos = scenarios(Path.of("demo-scenarios"), 1).stream().map(Outputs::name).toList();
            for (int i = 0; i < demos.size(); i++) {
                String demo = demos.get(i);
                String next = demos.get((i + 1) % demos.size());
                outputs.ofScenario(language, demo);
                outputs.keep(language, demo + ".compare.txt", "compare", demo, next);
                outputs.keep(language, demo + ".compare.json", "compare", demo, next, "--json");
            }
            for (Path bench : scenarios(Path.of("lessons"), 3)) {
                outputs.ofLessonBench(language, bench);
            }
            outputs.ofLessons(language);
            outputs.ofPlans(language);
            outputs.ofWords(language);
            outputs.ofDrawer(language);
            outputs.ofWrongCalls(language);
        }
    }

    private void withoutFile(String language) throws IOException {
        keep(language, "help.txt", "--help");
        for (String verb : List.of("open", "readings", "check", "run", "compare", "picture", "explain", "page", "share",
                "unshare", "new", "words", "measured", "plan", "wind", "vary", "parts", "drawer", "lesson", "completion",
                "help", "version")) {
            keep(language, "help-" + verb + ".txt", verb, "--help");
        }
        for (String verb : DRAWER_VERBS) {
            keep(language, "help-drawer-" + verb + ".txt", "drawer", verb, "--help");
        }
        for (String verb : List.of("list", "lint", "check", "handout", "page", "glossary")) {
            keep(language, "help-lesson-" + verb + ".txt", "lesson", verb, "--help");
        }
        for (String shell : List.of("bash", "zsh", "fish")) {
            keep(language, "completion." + shell, "completion", shell);
        }
        keep(language, "parts.txt", "parts");
        keep(language, "parts.json", "parts", "--json");
        Status parts = call("parts", "--json", "--lang", language);
        for (String id : parts.out.lines().filter(l -> l.strip().startsWith("\"id\"")).map(l -> l.split("\"")[3]).toList()) {
            keep(language, "part-" + id + ".txt", "parts", id);
        }
        keep(language, "measured.txt", "measured", "--rest", "4.14", "--cell", "3.80", "--coil", "3.38", "--ohm", "0.30");
        keep(language, "measured-limit.txt", "measured", "--rest", "3.9", "--cell", "3.1", "--coil", "2.6",
                "--ohm", "0.18", "--limit", "10");
    }

    /** What is said of a demo, which speaks the language of the call. */
    private void ofScenario(String language, String name) throws IOException {
        String scenario = name;
        for (String position : List.of("--fired", "--rest")) {
            keep(language, name + position + ".readings.txt", "readings", scenario, position);
            keep(language, name + position + ".readings.json", "readings", scenario, position, "--json");
        }
        keep(language, name + ".check.txt", "check", scenario);
        keep(language, name + ".check.json", "check", scenario, "--json");
        keep(language, name + ".run.txt", "run", scenario);
        keep(language, name + ".run-presses.txt", "run", scenario, "--on", "3s", "--off", "27s", "--until", "20min");
        keep(language, name + ".run.json", "run", scenario, "--json");
        keepFile(language, name + ".run.csv", "run", scenario, "--until", "60s", "--csv");
        for (String format : List.of("markdown", "bbcode", "text", "html")) {
            keep(language, name + ".explain." + format, "explain", scenario, "--format", format);
        }
        keep(language, name + ".explain-short.txt", "explain", scenario, "--format", "text", "--short");
        keep(language, name + ".explain-symptom.txt", "explain", scenario, "--format", "text", "--symptom",
                language.equals("en") ? "one side hardly glows" : "eine Seite glüht kaum");
        keep(language, name + ".words.txt", "words", scenario);
        keep(language, name + ".vary.txt", "vary", scenario, "--value", "coil.ohm", "--reading", "coil.power_W");
        keep(language, name + ".vary.json", "vary", scenario, "--value", "ambient", "--reading", "pack.current_A",
                "--points", "5", "--json");
        keep(language, name + ".vary-spread.txt", "vary", scenario, "--reading", "coil.power_W", "--spread",
                "--samples", "500");
        keep(language, name + ".vary-spread.json", "vary", scenario, "--reading", "coil.power_W", "--spread",
                "--samples", "500", "--json");
        keep(language, name + ".explain-at.txt", "explain", scenario, "--format", "text", "--at", "10s");
        Status share = keep(language, name + ".share.txt", "share", scenario);
        keep(language, name + ".unshare.txt", "unshare", share.out.strip());
        for (String size : SIZES) {
            for (String theme : THEMES) {
                keepFile(language, name + "." + size + "." + theme + ".png",
                        "picture", scenario, "--size", size, "--theme", theme, "-o");
            }
        }
        keepFile(language, name + ".svg", "picture", scenario, "-o");
        keepFile(language, name + ".schematic.png", "picture", scenario, "--schematic", "-o");
        keepFile(language, name + ".rest.png", "picture", scenario, "--rest", "-o");
    }

    private void ofLessonBench(String language, Path file) throws IOException {
        String name = file.getParent().getFileName() + "-" + name(file);
        keep(language, name + ".readings.json", "readings", file.toString(), "--json");
        keep(language, name + ".check.txt", "check", file.toString());
        keepFile(language, name + ".png", "picture", file.toString(), "-o");
    }

    private void ofLessons(String language) throws IOException {
        keep(language, "lesson-list.txt", "lesson", "list");
        keep(language, "lesson-lint.txt", "lesson", "lint");
        keepFile(language, "handout.html", "lesson", "handout", "-o");
        keepFile(language, "handout-key.html", "lesson", "handout", "--key", "-o");
    }

    private void ofPlans(String language) throws IOException {
        keep(language, "wind.txt", "wind", "--ohm", "0.5", "--alloy", "nicr-80-20", "--awg", "26", "--legs", "12");
        keep(language, "wind.json", "wind", "--wraps", "8", "--diameter", "0.5", "--inner", "3.5", "--json");
        keepFile(language, "wind.svg", "wind", "--watts", "40", "--awg", "24", "-o");
        keep(language, "plan.txt", "plan", "--watts", "40", "--lasts", "4h", "--cells", "2");
        keep(language, "plan.json", "plan", "--coil", "0.3", "--presses", "100", "--json");
        keep(language, "plan-board.txt", "plan", "--watts", "60", "--regulated", "--all");
        keep(language, "plan-drawer.txt", "plan", "--watts", "30", "--drawer", "lantern-yard", "--pick", "2");
        keep(language, "plan-bench.json", "plan", "--watts", "40", "-o", "-");
        String field = "two-by-two";
        keepFile(language, "vary-field.svg", "vary", field, "--value", "coil.ohm", "--and", "A.charge",
                "--reading", "coil.power_W", "--points", "5", "-o");
        keep(language, "vary-field.csv", "vary", field, "--value", "coil.ohm", "--and", "A.charge", "--reading",
                "coil.power_W", "--points", "5", "--csv");
        keepFile(language, "vary-band.svg", "vary", field, "--value", "coil.ohm", "--reading", "A.current_A",
                "--spread", "--points", "5", "-o");
    }

    /** Every line of words that the docs show and every one of the strangers' messages, right or wrong. */
    private void ofWords(String language) throws IOException {
        var lines = new TreeSet<String>();
        Pattern shown = Pattern.compile("`([^`\n]+)`");
        shown.matcher(Files.readString(Path.of("docs/words.md"))).results().forEach(found -> lines.add(found.group(1)));
        Pattern told = Pattern.compile("(?m)^line: \"(.*)\"$");
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/messages"))) {
            for (Path file : files.sorted().toList()) {
                told.matcher(Files.readString(file)).results().forEach(found -> lines.add(found.group(1)));
            }
        }
        var all = new StringBuilder();
        for (String line : lines) {
            for (String tried : List.of(line, "2p 2500 mAh 20 A; " + line, line + " @ 7", line + "; coil 0.5")) {
                Status answer = call("new", "--lang", language, tried);
                all.append("== ").append(tried).append('\n').append(answer.out).append(answer.err)
                        .append("status ").append(answer.status).append('\n');
            }
        }
        Files.writeString(folder.resolve(language).resolve("new.txt"), all);
    }

    /** What becomes of a drawer of one's own, step by step, and what is said of that of the class. */
    private void ofDrawer(String language) throws IOException {
        Path own = Files.createTempDirectory("outputs").resolve("drawer.json");
        Path table = own.resolveSibling("cells.csv");
        Files.writeString(table, """
                mark;model;bought;on;capacity_mAh;internal_mohm
                B1;inr18650-2500-20A;2026-03-01;2026-11-01;2.420;21,5
                B2;inr18650-2500-20A;01.03.2026;2026-11-02;2410;22,5
                """);
        Path spoilt = own.resolveSibling("spoilt.csv");
        Files.writeString(spoilt, """
                mark,model,bought,on,capacity_mAh,colour
                B1,no-such-model,2026-13-01,2026-11-01,many,red
                "B9,,,,,
                """);
        int step = 0;
        for (List<String> words : List.of(
                List.of("list"),
                List.of("add", "A1", "--model", "inr18650-2500-20A", "--bought", "2026-03-01", "--name", "green"),
                List.of("add", "A2", "--chemistry", "INR", "--format", "18650", "--capacity", "2500", "--resistance",
                        "20", "--limit", "20", "--note", "blue"),
                List.of("add", "A2", "--model", "no-such"),
                List.of("add", "A3", "--capacity", "-1"),
                List.of("add", "A3", "--bought", "soon"),
                List.of("measure", "A1", "--on", "2026-11-01", "--capacity", "2480", "--resistance", "21.3", "--how", "1 kHz"),
                List.of("measure", "A2", "--on", "2026-11-01", "--capacity", "2.4 Ah", "--rest", "4.19", "--week", "4.1"),
                List.of("measure", "A9", "--on", "2026-11-01", "--capacity", "2480"),
                List.of("measure", "A1", "--on", "2026-11-01"),
                List.of("import", spoilt.toString()),
                List.of("import", table.toString()),
                List.of("marry", "P1", "A1", "A2", "--since", "2026-11-02"),
                List.of("retire", "B2", "--on", "2026-11-03"),
                List.of("list"),
                List.of("export"),
                List.of("export", "--decimal-comma"),
                List.of("pair"),
                List.of("lay", "two-in-a-row", "A=A1", "B=A2"),
                List.of("lay", "two-in-a-row", "A=A1", "C=A2"),
                List.of("remove", "A1"),
                List.of("marry", "P1", "--apart"),
                List.of("list"))) {
            var all = new ArrayList<>(List.of("drawer"));
            all.addAll(words);
            all.addAll(List.of("--drawer", own.toString()));
            step++;
            Status answer = drawerCall(language, all);
            Path target = folder.resolve(language).resolve("drawer-%02d-%s.txt".formatted(step, words.get(0)));
            Files.writeString(target, (answer.out + answer.err + "status " + answer.status + "\n")
                    .replace(own.getParent().toString(), "DRAWER"));
        }
        keep(language, "drawer-class-list.txt", "drawer", "list", "--drawer", "lantern-yard");
        keep(language, "drawer-class-list.json", "drawer", "list", "--drawer", "lantern-yard", "--json");
        keep(language, "drawer-class-pair.txt", "drawer", "pair", "--cells", "3", "--drawer", "lantern-yard");
        keep(language, "drawer-class-pair.json", "drawer", "pair", "--drawer", "lantern-yard", "--json");
        keep(language, "drawer-class-export.csv", "drawer", "export", "--drawer", "lantern-yard");
        keep(language, "drawer-class-add.txt", "drawer", "add", "Z1", "--drawer", "lantern-yard");
    }

    private static Status drawerCall(String language, List<String> words) {
        var all = new ArrayList<>(words);
        all.addAll(2, List.of("--lang", language));
        return call(all.toArray(String[]::new));
    }

    private void ofWrongCalls(String language) throws IOException {
        String bench = "two-in-a-row";
        int place = 0;
        for (List<String> words : List.of(
                List.of("picture", bench, "-o", "x.gif"),
                List.of("picture", bench, "-o", "x"),
                List.of("picture", bench, "-o", "no-folder/x.png"),
                List.of("picture", bench, "-o", "x.png", "--size", "1x1"),
                List.of("picture", bench, "-o", "x.png", "--theme", "drak"),
                List.of("page", bench, "-o", "x.txt"),
                List.of("page", bench),
                List.of("explain", bench, "-o", "x.png"),
                List.of("explain", bench, "--format", "word"),
                List.of("run", bench, "--csv", "x.png", "--until", "-1s"),
                List.of("wind", "--ohm", "0.5", "--awg", "26", "-o", "x.gif"),
                List.of("wind", "--ohm", "0.5", "--awg", "26", "--alloy", "fecral"),
                List.of("wind", "--ohm", "-0.5", "--awg", "26"),
                List.of("vary", bench, "--value", "coil.ohm", "--reading", "coil.power_W", "-o", "x.gif"),
                List.of("vary", bench, "--value", "coil.ohms", "--reading", "coil.power_W"),
                List.of("vary", bench, "--value", "coil.ohm", "--reading", "coil.power"),
                List.of("vary", bench, "--reading", "coil.power_W"),
                List.of("vary", bench, "--value", "coil.ohm", "--reading", "coil.power_W", "--json", "--csv"),
                List.of("lesson", "handout", "-o", "x.gif"),
                List.of("lesson", "page", "04", "-o", "x.gif"),
                List.of("lesson", "page", "99", "-o", "x.html"),
                List.of("measured", "--rest", "4", "--cell", "4.2", "--coil", "3", "--ohm", "0.3"),
                List.of("measured", "--rest", "4", "--cell", "3.8", "--coil", "3.5", "--ohm", "0.3", "-o", "-", "--json"),
                List.of("measured", "--rest", "4", "--cell", "3.8", "--coil", "3.5", "--ohm", "0.3", "-o", "-"),
                List.of("plan"),
                List.of("plan", "--watts", "40", "--cells", "99"),
                List.of("plan", "--watts", "40", "--pick", "999"),
                List.of("unshare", "nonsense"),
                List.of("readings", "no-such-file"),
                List.of("raedings", bench))) {
            place++;
            var all = new ArrayList<>(words);
            Status answer = call(withLanguage(language, all));
            Path target = folder.resolve(language).resolve("wrong-%02d-%s.txt".formatted(place, words.get(0)));
            Files.writeString(target, answer.out + answer.err + "status " + answer.status + "\n");
        }
    }

    private static String[] withLanguage(String language, List<String> words) {
        var all = new ArrayList<>(List.of("--lang", language));
        all.addAll(words);
        return all.toArray(String[]::new);
    }

    private Status keep(String language, String name, String... words) throws IOException {
        var all = new ArrayList<>(List.of(words));
        all.addAll(1, List.of("--lang", language));
        if (words[0].startsWith("-")) {
            all = new ArrayList<>(List.of("--lang", language, words[0]));
        }
        Status answer = call(all.toArray(String[]::new));
        Path target = folder.resolve(language).resolve(name);
        Files.createDirectories(target.getParent());
        Files.writeString(target, answer.out + answer.err + "status " + answer.status + "\n");
        return answer;
    }

    /** A call whose last word is followed by the name of the file that it writes. */
    private void keepFile(String language, String name, String... words) throws IOException {
        Path target = folder.resolve(language).resolve(name);
        Files.createDirectories(target.getParent());
        Files.deleteIfExists(target);
        var all = new ArrayList<>(List.of(words));
        all.add(target.toString());
        all.addAll(1, List.of("--lang", language));
        Status answer = call(all.toArray(String[]::new));
        if (answer.status != 0) {
            Files.writeString(target.resolveSibling(name + ".said"), answer.out + answer.err + answer.status);
        }
    }

    private record Status(int status, String out, String err) {}

    private static Status call(String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        int status = SagwiseCommand.run(words, new NoWindow(), new PrintWriter(out), new PrintWriter(err),
                new ByteArrayInputStream("".getBytes(StandardCharsets.UTF_8)));
        return new Status(status, out.toString(), err.toString());
    }

    private static List<Path> scenarios(Path folder, int depth) throws IOException {
        try (Stream<Path> files = Files.walk(folder, depth)) {
            return files.filter(f -> f.toString().endsWith(".sagwise.json")).sorted().toList();
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".sagwise.json", "");
    }
}
