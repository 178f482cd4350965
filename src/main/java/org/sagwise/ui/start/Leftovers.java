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
public record Leftovers(Recovery recovery, ScenarioReader reader) {

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
