package org.sagwise.ui.start;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Dialogs;

/** Offers what was not saved when the program ended without a chance to ask. */
final class RecoveryDialog {

    /** What is to become of it. */
    enum Answer {
        BRING_BACK,
        THROW_AWAY,
        LATER
    }

    private RecoveryDialog() {}

    static Answer ask(Scenario left, Dialogs dialogs) {
        String title = left.title().strip();
        Label words = new Label(dialogs.wording()
                .say(
                        "recovery.text",
                        title.isEmpty() ? dialogs.wording().say("header.untitled") : title,
                        left.parts().size()));
        words.setWrapText(true);
        words.getStyleClass().add("dialog-words");
        ButtonType back = dialogs.agree("recovery.back");
        ButtonType away = dialogs.other("recovery.away");
        Optional<ButtonType> answer = dialogs.ask(
                "recovery-dialog",
                dialogs.wording().say("recovery.title"),
                words,
                List.of(back, away, dialogs.leave("recovery.later")));
        return answer.equals(Optional.of(back))
                ? Answer.BRING_BACK
                : answer.equals(Optional.of(away)) ? Answer.THROW_AWAY : Answer.LATER;
    }
}
