package org.sagwise.ui.lesson.author;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.Finding;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Something to be mended: where in the file, what is wrong, and what would be right. */
final class FaultCard extends VBox {

    FaultCard(Finding fault, Wording wording) {
        getStyleClass().add("fault");
        Label place = WrappedLabel.of(place(fault, wording), "fault-place");
        Label what = WrappedLabel.of(fault.sentence(wording.locale()), "fault-text");
        getChildren().addAll(place, what);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(place.getText() + ": " + what.getText());
    }

    private static String place(Finding fault, Wording wording) {
        return fault.position()
                .map(at ->
                        wording.say("author.at", String.valueOf(at.line()), String.valueOf(at.column()), fault.place()))
                .orElseGet(() -> wording.say("author.whole"));
    }
}
