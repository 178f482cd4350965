package org.sagwise.ui.lesson.author;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.Finding;
import org.sagwise.ui.text.Wording;

/** Something to be mended: where in the file, what is wrong, and what would be right. */
final class FaultCard extends VBox {

    FaultCard(Finding fault, Wording wording) {
        getStyleClass().add("fault");
        Label place = new Label(place(fault, wording));
        place.getStyleClass().add("fault-place");
        place.setWrapText(true);
        place.setMinHeight(USE_PREF_SIZE);
        Label what = new Label(fault.sentence(wording.locale()));
        what.getStyleClass().add("fault-text");
        what.setWrapText(true);
        what.setMinHeight(USE_PREF_SIZE);
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
