package org.sagwise.ui.document;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.sagwise.file.Loaded;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

/** Scenarios in files. */
public final class DiskScenarios implements ScenarioStore {

    private static final int MOST_COPIES = 1000;

    private final ScenarioReader reader;
    private final Supplier<Locale> locale;

    /**
     * @param locale the present language of the window
     */
    public DiskScenarios(ScenarioReader reader, Supplier<Locale> locale) {
        this.reader = reader;
        this.locale = locale;
    }

    /** A pipe or a device would keep the window waiting for ever. */
    @Override
    public Outcome read(Path file) {
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
            return outcome(new Loaded.Refused(List.of(Finding.of("", Problem.FILE_IS_NO_FILE, file.toString()))));
        }
        return outcome(reader.read(file));
    }

    @Override
    public Outcome readText(String text) {
        return outcome(ShareText.readFileOrPost(text, reader));
    }

    private Outcome outcome(Loaded loaded) {
        return loaded instanceof Loaded.Ok ok
                ? new Read(ok.opened())
                : new Refused(loaded.findings().stream().map(this::trouble).toList());
    }

    @Override
    public Optional<String> write(Path file, Scenario scenario) {
        return ScenarioFiles.save(file, scenario) instanceof Saved.Failed failed
                ? Optional.of(failed.problem().text(locale.get()))
                : Optional.empty();
    }

    @Override
    public Optional<Path> keepCopy(Path file) {
        String name = file.getFileName().toString();
        int end = name.endsWith(Documents.ENDING)
                ? name.length() - Documents.ENDING.length()
                : Math.max(name.lastIndexOf('.'), 0);
        for (int i = 1; i <= MOST_COPIES; i++) {
            Path copy = file.resolveSibling(name.substring(0, end) + "-other-" + i + name.substring(end));
            try {
                return Optional.of(Files.copy(file, copy));
            } catch (FileAlreadyExistsException taken) {
                continue;
            } catch (IOException failure) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Trouble trouble(Finding found) {
        String place = found.place();
        String position = found.position().map(at -> at.toString()).orElse("");
        return new Trouble(
                place.isEmpty() || position.isEmpty() ? place + position : place + "  " + position,
                found.sentence(locale.get()));
    }
}
