package org.sagwise.ui.analysis;

import java.util.List;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** A cure to make with one press, and what it would change. */
final class CureBox extends VBox {

    /** What, what it was, an arrow, what it is. */
    private static final int PIECES = 4;

    /** Width below which these do not stand in one line, in letters. */
    private static final double LEAST_LETTERS = 17;

    /** Words that are not broken, in letters: a number keeps its unit. */
    private static final int LONGEST_WHOLE = 12;

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
        for (CureChange change : changes) {
            grid.getChildren()
                    .addAll(
                            label(change.what(), "quiet"),
                            label(change.was(), "cure-was"),
                            label("→", "quiet"),
                            label(change.is(), "cure-is"));
        }
        lay(grid, false);
        // A request made while it is being laid out would be lost.
        grid.widthProperty().subscribe(width -> Platform.runLater(() -> lay(grid, isNarrow(grid))));
        return grid;
    }

    private static boolean isNarrow(GridPane grid) {
        return !grid.getChildren().isEmpty()
                && grid.getWidth()
                        < LEAST_LETTERS
                                * ((Label) grid.getChildren().get(0)).getFont().getSize();
    }

    /** What changes stands before its values, or above them where the column is narrow against its letters. */
    private static void lay(GridPane grid, boolean narrow) {
        List<Node> pieces = grid.getChildren();
        for (int i = 0; i < pieces.size(); i++) {
            Label piece = (Label) pieces.get(i);
            piece.setMinWidth(narrow && piece.getText().length() <= LONGEST_WHOLE ? USE_PREF_SIZE : USE_COMPUTED_SIZE);
            int row = i / PIECES;
            int column = i % PIECES;
            if (!narrow) {
                GridPane.setConstraints(piece, column, row, 1, 1);
            } else if (column == 0) {
                GridPane.setConstraints(piece, 0, 2 * row, PIECES - 1, 1);
            } else {
                GridPane.setConstraints(piece, column - 1, 2 * row + 1, 1, 1);
            }
        }
    }

    private static Label label(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }
}
