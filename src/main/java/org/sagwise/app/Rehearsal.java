package org.sagwise.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.sagwise.cli.NoWindow;
import org.sagwise.cli.SagwiseCommand;

/**
 * Runs every verb once and throws the results away, so that the JVM can archive the classes that
 * they load; later starts are faster with such an archive.
 */
public final class Rehearsal {

    private static final String FILE = "FILE";

    private static final List<List<String>> CALLS = List.of(
            List.of("--help"),
            List.of("--no-such-option"),
            List.of("readings", FILE),
            List.of("readings", FILE, "--json"),
            List.of("check", FILE),
            List.of("check", FILE, "--json"),
            List.of("run", FILE, "--json"),
            List.of("compare", FILE, FILE),
            List.of("explain", FILE),
            List.of("explain", FILE, "--short", "--symptom=weak"),
            List.of("picture", FILE, "-o", "-"),
            List.of("help"),
            List.of("completion", "bash"),
            List.of("explain", FILE, "--format=html"),
            List.of("page", FILE, "-o", "-"),
            List.of("share", FILE),
            List.of("new", "2p 2500 mAh 20 A; B reversed; coil 0.5"),
            List.of("words", FILE),
            List.of("vary", FILE, "--value=ambient", "--reading=pack.delivered_W"),
            List.of("parts"),
            List.of("drawer", "list", "--drawer", "lantern-yard"),
            List.of("lesson", "list"));

    private Rehearsal() {}

    /**
     * Rehearses with the first scenario of a folder.
     *
     * @param args the folder; without one, or without a scenario in it, only calls that need none
     *     do something useful
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        String scenario =
                firstScenario(Path.of(args.length == 0 ? "." : args[0])).toString();
        for (List<String> call : CALLS) {
            rehearse(call.stream().map(word -> word.equals(FILE) ? scenario : word));
        }
    }

    private static void rehearse(Stream<String> words) {
        var nowhere = new PrintWriter(Writer.nullWriter());
        SagwiseCommand.run(
                words.toArray(String[]::new), new NoWindow(), nowhere, nowhere, InputStream.nullInputStream());
    }

    private static Path firstScenario(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return folder;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".sagwise.json"))
                    .sorted()
                    .findFirst()
                    .orElse(folder);
        }
    }
}
