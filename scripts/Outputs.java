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
        }
    }

    private void withoutFile(String language) throws IOException {
        keep(language, "help.txt", "--help");
        for (String verb : List.of("open", "readings", "check", "run", "compare", "picture", "explain", "share",
                "unshare", "measured", "parts", "lesson")) {
            keep(language, "help-" + verb + ".txt", verb, "--help");
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
