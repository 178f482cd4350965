package org.sagwise.ui.start;

import java.nio.file.Path;
import java.util.Optional;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.document.Recovery;
import org.sagwise.ui.kit.Dialogs;

/**
 * What programs that ended without a chance to ask have left behind.
 *
 * @param recovery where it is kept
 * @param reader reads it
 */
public record RecoveryOffer(Recovery recovery, ScenarioReader reader) {

    /** Whether there is anything of the kind. */
    public boolean isNeeded() {
        return !recovery.left().isEmpty();
    }

    /** Offers each of them; what cannot be read stays where it is. */
    public void offer(Documents documents, Dialogs dialogs) {
        for (Path file : recovery.left()) {
            Optional<Scenario> scenario = recovery.read(file, reader);
            if (scenario.isPresent()) {
                settle(file, scenario.get(), documents, dialogs);
            }
        }
    }

    private void settle(Path file, Scenario scenario, Documents documents, Dialogs dialogs) {
        switch (RecoveryDialog.ask(scenario, dialogs)) {
            // It is kept until it lies on the bench, for whoever stays with what lies there now.
            case BRING_BACK -> documents.openUnsaved(scenario, () -> recovery.forget(file));
            case THROW_AWAY -> recovery.forget(file);
            case LATER -> {}
        }
    }
}
