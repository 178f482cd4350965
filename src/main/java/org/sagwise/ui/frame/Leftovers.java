package org.sagwise.ui.frame;

import java.nio.file.Path;
import java.util.Optional;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.dialog.Dialogs;
import org.sagwise.ui.file.Documents;
import org.sagwise.ui.file.Recovery;

/**
 * What programs that ended without a chance to ask have left behind.
 *
 * @param recovery where it is kept
 * @param reader reads it
 */
public record Leftovers(Recovery recovery, ScenarioReader reader) {

    /** Offers each of them; what cannot be read stays where it is. */
    void offer(Documents documents, Dialogs dialogs) {
        for (Path file : recovery.left()) {
            Optional<Scenario> scenario = recovery.read(file, reader);
            if (scenario.isPresent()) {
                settle(file, scenario.get(), documents, dialogs);
            }
        }
    }

    private void settle(Path file, Scenario scenario, Documents documents, Dialogs dialogs) {
        RecoveryDialog.Answer answer = RecoveryDialog.ask(scenario, dialogs);
        if (answer == RecoveryDialog.Answer.LATER) {
            return;
        }
        if (answer == RecoveryDialog.Answer.BRING_BACK) {
            documents.openUnsaved(scenario);
        }
        recovery.forget(file);
    }
}
