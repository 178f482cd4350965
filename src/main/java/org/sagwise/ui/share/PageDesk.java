package org.sagwise.ui.share;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.util.Subscription;
import org.sagwise.errand.Errand;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;

/** Writes the live page of the bench where a person says, and remembers for which bench it did. */
public final class PageDesk {

    private final LivePages pages;
    private final LatestTask latest;
    private final ReadOnlyObjectWrapper<Optional<Path>> underWay = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Made> made = Optional.empty();
    private Subscription inVain = Subscription.EMPTY;

    /** A page that was written. */
    private record Made(Scenario scenario, Path file) {}

    public PageDesk(LivePages pages, LatestTask latest) {
        this.pages = pages;
        this.latest = latest;
        latest.stateProperty().subscribe(now -> {
            if (now != LatestTask.State.WORKING) {
                underWay.set(Optional.empty());
            }
        });
    }

    /** The file whose page is being made. */
    public ReadOnlyObjectProperty<Optional<Path>> underWayProperty() {
        return underWay.getReadOnlyProperty();
    }

    /** Gives it up; no file is written then, unless it was just being written. */
    public void stop() {
        latest.stop();
    }

    boolean isReady() {
        return pages.isHere();
    }

    /**
     * Writes the page behind the scenes.
     *
     * @param say says in passing what has become of it
     */
    void write(Path file, Scenario scenario, Wording wording, Consumer<String> say) {
        inVain.unsubscribe();
        underWay.set(Optional.of(file));
        inVain = latest.stateProperty()
                .subscribe(now -> WorkLine.why(now, wording).ifPresent(say));
        latest.ask(
                () -> pages.write(scenario, wording.locale()).map(page -> save(page, file)),
                saved -> say.accept(
                        saved.map(it -> words(it, file, scenario, wording)).orElseGet(() -> wording.say("page.none"))));
    }

    private static Saved save(String page, Path file) {
        Errand.heed();
        return ScenarioFiles.save(file, page.getBytes(StandardCharsets.UTF_8));
    }

    private String words(Saved saved, Path file, Scenario scenario, Wording wording) {
        if (saved instanceof Saved.Failed failed) {
            return failed.problem().text(wording.locale());
        }
        made = Optional.of(new Made(scenario, file));
        return wording.say("page.saved", file.getFileName());
    }

    /** Name of the file that was written for this very bench. */
    Optional<String> nameFor(Scenario scenario) {
        return made.filter(it -> it.scenario().equals(scenario))
                .map(it -> it.file().getFileName().toString());
    }
}
