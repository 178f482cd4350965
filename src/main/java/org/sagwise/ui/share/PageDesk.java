package org.sagwise.ui.share;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.util.Subscription;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;

/** Writes the live page of the bench where a person says, and remembers for which bench it did. */
final class PageDesk {

    private final LivePages pages;
    private final LatestTask latest;
    private final Consumer<String> say;
    private Optional<Made> made = Optional.empty();
    private Subscription inVain = Subscription.EMPTY;

    /** A page that was written. */
    private record Made(Scenario scenario, Path file) {}

    PageDesk(LivePages pages, LatestTask latest, Consumer<String> say) {
        this.pages = pages;
        this.latest = latest;
        this.say = say;
    }

    boolean isReady() {
        return pages.isHere();
    }

    /** Writes the page behind the scenes, and says in passing what has become of it. */
    void write(Path file, Scenario scenario, Wording wording) {
        say.accept(wording.say("page.writing"));
        inVain.unsubscribe();
        inVain = latest.stateProperty()
                .subscribe(now -> WorkLine.why(now, wording).ifPresent(say));
        latest.ask(
                () -> pages.write(scenario, wording.locale())
                        .map(page -> ScenarioFiles.save(file, page.getBytes(StandardCharsets.UTF_8))),
                saved -> say.accept(
                        saved.map(it -> words(it, file, scenario, wording)).orElseGet(() -> wording.say("page.none"))));
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
