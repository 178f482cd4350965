package org.sagwise.ui.shell;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.text.Wording;

/** How everything is done by keyboard. */
final class KeysDialog {

    /** Keys that belong to no command: the bundle has {@code keys.<id>} and what it does. */
    private static final List<String> MOVES = List.of(
            "space", "tab", "arrows", "enter", "choose", "turn", "flip", "move", "nudge", "join", "gather", "joint",
            "probe", "dial", "write", "note", "delete", "escape", "pan", "menu");

    private KeysDialog() {}

    /** Tells what every key does: those by which hands are led, and those of the menus. */
    static void show(List<Menu> menus, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("keys");
        for (String move : MOVES) {
            add(grid, wording.say("keys." + move), wording.say("keys." + move + ".does"));
        }
        menus.forEach(menu -> add(grid, menu));
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().addAll("plain-scroll", "keys-scroll");
        dialogs.tell("keys-dialog", wording.say("keys.heading"), scroll);
    }

    private static void add(GridPane grid, Menu menu) {
        List<MenuItem> items = withKeys(menu).toList();
        if (!items.isEmpty()) {
            Label title = new Label(menu.getText().replace("_", ""));
            title.getStyleClass().add("section-title");
            grid.add(title, 0, grid.getRowCount(), 2, 1);
        }
        for (MenuItem item : items) {
            add(grid, item.getAccelerator().getDisplayText(), Controls.tipOf(item));
        }
    }

    private static Stream<MenuItem> withKeys(MenuItem item) {
        return item instanceof Menu menu
                ? menu.getItems().stream().flatMap(KeysDialog::withKeys)
                : Stream.of(item).filter(each -> each.getAccelerator() != null);
    }

    private static void add(GridPane grid, String keys, String does) {
        Label key = new Label(keys);
        key.getStyleClass().add("key");
        key.setMinWidth(Label.USE_PREF_SIZE);
        Label what = new Label(does);
        what.setWrapText(true);
        grid.addRow(grid.getRowCount(), key, what);
    }
}
