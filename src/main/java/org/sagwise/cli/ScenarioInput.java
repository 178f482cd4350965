package org.sagwise.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Finding;
import org.sagwise.words.Complaint;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;

/**
 * Reads the scenario that a call names: a file, {@code -} for standard input, a share text, or a
 * demo by its name, in the language of the call.
 */
final class ScenarioInput {

    /** Names standard input instead of a file. */
    static final String STANDARD_INPUT = "-";

    /** More bytes than any post with a share text has. */
    private static final int MOST_SHARED = 8 * 1024 * 1024;

    private final CallContext call;

    ScenarioInput(CallContext call) {
        this.call = call;
    }

    /** What people call this input. */
    String shown(String name) {
        if (name.equals(STANDARD_INPUT)) {
            return call.texts().say("standard-input");
        }
        if (ShareText.isIn(name)) {
            return call.texts().say("share.text");
        }
        return name.isBlank() ? '"' + name + '"' : name;
    }

    /** What keeps a name from being read as a file at all, in words; empty if nothing does. */
    Optional<String> wrongName(String name) {
        if (name.equals(STANDARD_INPUT)) {
            return Optional.empty();
        }
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException wrong) {
            return Optional.of(call.texts().say("wrong.name"));
        }
        if (name.isBlank()) {
            return Optional.of(call.texts().say("wrong.name"));
        }
        if (Files.isDirectory(path)) {
            return Optional.of(call.texts().say("wrong.folder"));
        }
        if (!Files.exists(path)) {
            return Optional.of(call.texts().say("wrong.no-such-file"));
        }
        return Files.isReadable(path)
                ? Optional.empty()
                : Optional.of(call.texts().say("wrong.not-allowed"));
    }

    /** Whether it names a demo, and no file. */
    boolean isDemo(String name) {
        return DemoScenarios.names().contains(name) && wrongName(name).isPresent();
    }

    /** Reads it, or opens it if it is a share text; whatever goes wrong is told in words. */
    GivenScenario read(String name) {
        if (ShareText.isIn(name) && wrongName(name).isPresent()) {
            return shared(name);
        }
        if (isDemo(name)) {
            return given(name, reader().read(DemoScenarios.bytes(name, call.locale())));
        }
        Optional<String> wrong = wrongName(name);
        if (wrong.isPresent()) {
            return GivenScenario.unreadable(name, wrong.get());
        }
        try (InputStream stream = open(name)) {
            return given(name, ShareText.readFileOrPost(stream, reader()));
        } catch (IOException failure) {
            return unreadable(name, failure);
        }
    }

    /** Builds what a line of words says. */
    GivenScenario readWords(String line) {
        WordsBench answer = TradeWords.read(line, CatalogueLoader.builtIn(), call.locale());
        if (answer instanceof WordsBench.Built built) {
            WordsAnswer.assumed(call, built).ifPresent(call::problem);
            return GivenScenario.of(GivenFile.OF, built.bench());
        }
        List<Complaint> complaints = ((WordsBench.Refused) answer).complaints();
        return GivenScenario.refused(
                GivenFile.OF, complaints.stream().map(this::problem).toList());
    }

    private GivenScenario.FileProblem problem(Complaint found) {
        return new GivenScenario.FileProblem(String.valueOf(found.span().column()), found.text(call.locale()));
    }

    /** Opens a share text, or the one on standard input; a scenario file is none. */
    GivenScenario readShared(String text) {
        if (!text.equals(STANDARD_INPUT)) {
            return shared(text);
        }
        try {
            byte[] bytes = call.in().readNBytes(MOST_SHARED);
            return given(text, ShareText.read(new String(bytes, StandardCharsets.UTF_8), reader()));
        } catch (IOException failure) {
            return unreadable(text, failure);
        }
    }

    private GivenScenario shared(String text) {
        return given(call.texts().say("share.text"), ShareText.read(text, reader()));
    }

    private GivenScenario unreadable(String name, IOException failure) {
        return GivenScenario.unreadable(name, call.texts().say("wrong.unreadable", failure.getMessage()));
    }

    private static ScenarioReader reader() {
        return new ScenarioReader(CatalogueLoader.builtIn());
    }

    private InputStream open(String name) throws IOException {
        return name.equals(STANDARD_INPUT) ? call.in() : Files.newInputStream(Path.of(name));
    }

    private GivenScenario given(String name, Loaded loaded) {
        return loaded.scenario()
                .map(scenario -> GivenScenario.of(name, scenario))
                .orElseGet(() -> GivenScenario.refused(
                        name, loaded.findings().stream().map(this::problem).toList()));
    }

    private GivenScenario.FileProblem problem(Finding found) {
        return new GivenScenario.FileProblem(found.place(), found.text(call.locale()));
    }
}
