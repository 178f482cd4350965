package org.sagwise.ui.shell;

import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.edit.ArrangeCells;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.EditCommands;
import org.sagwise.ui.workbench.Workbench;

/** Asks in how many rows cells shall be joined, where there is more than one way. */
final class RowsDialog {

    private RowsDialog() {}

    static void show(Workbench work, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        int cells = EditCommands.cells(work).size();
        ToggleGroup group = new ToggleGroup();
        VBox content = new VBox();
        content.getStyleClass().add("dialog-words");
        for (int rows : EditCommands.rows(work)) {
            RadioButton button = new RadioButton(
                    wording.say("rows.choice", ArrangeCells.shortName(cells, rows), rows, cells / rows));
            button.setId("rows-" + ArrangeCells.shortName(cells, rows).toLowerCase(Locale.ROOT));
            button.setToggleGroup(group);
            button.setUserData(rows);
            content.getChildren().add(button);
        }
        content.getChildren().add(0, new Label(wording.say("rows.text", cells)));
        RadioButton first = (RadioButton) group.getToggles().get(0);
        first.setSelected(true);
        Platform.runLater(first::requestFocus);
        content.addEventFilter(KeyEvent.KEY_PRESSED, event -> agreeBy(event, content));
        ButtonType agree = dialogs.agree("rows.do");
        dialogs.ask("rows-dialog", wording.say("rows.title"), content, List.of(agree, dialogs.leave("dialog.cancel")))
                .filter(agree::equals)
                .map(agreed -> (Integer) group.getSelectedToggle().getUserData())
                .ifPresent(rows -> EditCommands.arrange(work, rows));
    }

    /** A radio button would keep Enter for itself. */
    private static void agreeBy(KeyEvent event, VBox content) {
        if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            ((Button) content.getScene().lookup("#rows-dialog-ok_done")).fire();
        }
    }
}
