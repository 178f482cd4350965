package org.sagwise.ui.frame;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.GridPane;

import org.sagwise.ui.command.Command;
import org.sagwise.ui.dialog.Dialogs;
import org.sagwise.ui.text.Wording;

import java.util.List;

/** How everything is done by keyboard. */
final class KeysDialog {

    /** Keys that belong to no command: the bundle has {@code keys.<id>} and what it does. */
    private static final List<String> MOVES =
            List.of(
                    "space", "tab", "arrows", "enter", "choose", "turn", "flip", "move", "nudge",
                    "join", "gather", "joint", "probe", "dial", "note", "delete", "escape", "pan",
                    "menu");

    private KeysDialog() {}

    static void show(List<Command> commands, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("keys");
        int row = 0;
        for (String move : MOVES) {
            add(grid, row++, wording.say("keys." + move), wording.say("keys." + move + ".does"));
        }
        for (Command command : commands) {
            if (command.keys().isPresent()) {
                String keys = command.keys().map(KeyCombination::getDisplayText).orElseThrow();
                add(grid, row++, keys, wording.say(command.tipKey()));
            }
        }
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().addAll("plain-scroll", "keys-scroll");
        dialogs.tell("keys-dialog", wording.say("keys.heading"), scroll);
    }

    private static void add(GridPane grid, int row, String keys, String does) {
        Label key = new Label(keys);
        key.getStyleClass().add("key");
        key.setMinWidth(Label.USE_PREF_SIZE);
        Label what = new Label(does);
        what.setWrapText(true);
        grid.addRow(row, key, what);
    }
}
