package org.sagwise.ui.document;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.sagwise.file.Loaded;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;

/** Scenarios in files. */
public final class DiskScenarios implements ScenarioStore {

    private final ScenarioReader reader;
    private final Supplier<Locale> locale;

    /**
     * @param locale the present language of the window
     */
    public DiskScenarios(ScenarioReader reader, Supplier<Locale> locale) {
        this.reader = reader;
        this.locale = locale;
    }

    @Override
    public Outcome read(Path file) {
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

    private Trouble trouble(Finding found) {
        String place = found.place();
        String position = found.position().map(at -> at.toString()).orElse("");
        return new Trouble(
                place.isEmpty() || position.isEmpty() ? place + position : place + "  " + position,
                found.sentence(locale.get()));
    }
}
