package org.sagwise.ui.analysis;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** A cure to make with one press, and what it would change. */
final class CureBox extends VBox {

    /**
     * @param make makes the cure
     */
    CureBox(Offer offer, Cures cures, Wording wording, Runnable make) {
        List<CureChange> changes = cures.before()
                .map(before -> CureChange.of(before, offer, wording))
                .orElse(List.of());
        getStyleClass().add("cure");
        getChildren().add(button(offer, changes, wording, make));
        // Where a graver caution has the same cure, the change stands there.
        if (!cures.isRepeated(offer)) {
            getChildren().add(table(changes));
        }
    }

    /** A button that makes a cure, its consequences in the tooltip. */
    static Button button(Offer offer, List<CureChange> changes, Wording wording, Runnable make) {
        String name = offer.fix().name(wording.locale());
        String lines = changes.stream().map(change -> change.line(wording)).collect(Collectors.joining("\n"));
        Button button = new Button(name);
        button.getStyleClass().add("cure-button");
        button.setWrapText(true);
        button.setMnemonicParsing(false);
        button.setId("cure-" + offer.caution().id() + "-" + offer.fix().kind().key());
        Tip.put(button, wording.say("cure.tip", lines));
        button.setAccessibleText(wording.say("cure.spoken", name, lines));
        button.setOnAction(event -> make.run());
        return button;
    }

    private static GridPane table(List<CureChange> changes) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("cure-changes");
        int row = 0;
        for (CureChange change : changes) {
            grid.addRow(
                    row++,
                    label(change.what(), "quiet"),
                    label(change.was(), "cure-was"),
                    label("→", "quiet"),
                    label(change.is(), "cure-is"));
        }
        return grid;
    }

    private static Label label(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }
}
