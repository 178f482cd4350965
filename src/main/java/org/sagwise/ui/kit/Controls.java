package org.sagwise.ui.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Control;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.sagwise.ui.text.Wording;

/** Makes menu items and buttons of commands, all of the same words, keys and tooltips. */
public final class Controls {

    private static final String TIP = "tip";

    private final Wording wording;
    private final Subscriptions subscriptions;

    /**
     * @param subscriptions closed when the controls are thrown away
     */
    public Controls(Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        this.subscriptions = subscriptions;
    }

    /** A menu with these items. */
    public Menu menu(String id, MenuItem... items) {
        Menu menu = new Menu(wording.say("menu." + id));
        menu.setId("menu-" + id);
        menu.getItems().addAll(items);
        return menu;
    }

    /** The menu of a row of the table. */
    public Menu menu(String id, Commands commands, Map<String, Menu> filled) {
        Menu menu = menu(id);
        menu.getItems().setAll(items(id, commands, filled));
        return menu;
    }

    /**
     * What stands in a row of the table of menus.
     *
     * @param filled the menus that fill themselves
     */
    public List<MenuItem> items(String row, Commands commands, Map<String, Menu> filled) {
        return MenuTable.row(row).stream()
                .map(entry -> item(entry, commands, filled))
                .toList();
    }

    private MenuItem item(String entry, Commands commands, Map<String, Menu> filled) {
        if (entry.equals(MenuTable.LINE)) {
            return line();
        }
        return MenuTable.menu(entry)
                .<MenuItem>map(id -> Optional.ofNullable(filled.get(id)).orElseGet(() -> menu(id, commands, filled)))
                .orElseGet(() -> item(commands.get(entry)));
    }

    /** An item for a command, with a mark if the command has one. */
    public MenuItem item(Command command) {
        if (command.mark().isEmpty()) {
            return wired(new MenuItem(), command);
        }
        Command.Mark mark = command.mark().get();
        if (mark.oneOfSeveral()) {
            RadioMenuItem item = wired(new RadioMenuItem(), command);
            subscriptions.watch(mark.shown(), item::setSelected);
            return item;
        }
        CheckMenuItem item = wired(new CheckMenuItem(), command);
        subscriptions.watch(mark.shown(), item::setSelected);
        return item;
    }

    public MenuItem line() {
        return new SeparatorMenuItem();
    }

    /** What an item made here does, in a sentence; empty for other items. */
    public static String tipOf(MenuItem item) {
        return (String) item.getProperties().getOrDefault(TIP, "");
    }

    /** A button with the words of a command. */
    public Button button(Command command) {
        Button button = new Button(wording.say(command.textKey()));
        button.setId("button-" + command.id());
        wire(button, command);
        return button;
    }

    /** Makes a button do what a command does. */
    public void wire(ButtonBase button, Command command) {
        button.setOnAction(event -> command.action().run());
        button.disableProperty().bind(command.unavailable());
        explain(button, command);
    }

    /** Makes the keys of commands work in a window that has no menus. */
    public static void listen(Node inWindow, List<Command> commands) {
        inWindow.sceneProperty().subscribe(scene -> {
            if (scene != null) {
                commands.forEach(command -> listen(scene, command));
            }
        });
    }

    private static void listen(Scene scene, Command command) {
        Runnable unlessUnavailable = () -> {
            if (!command.unavailable().get()) {
                command.action().run();
            }
        };
        command.keys().ifPresent(keys -> scene.getAccelerators().put(keys, unlessUnavailable));
    }

    /** Gives a control the tooltip of a command, with its keys. */
    public void explain(Control control, Command command) {
        Tip.put(control, tip(command));
    }

    private String tip(Command command) {
        String what = wording.say(command.tipKey());
        return command.keys()
                .map(keys -> wording.say("tip.with-keys", what, keys.getDisplayText()))
                .orElse(what);
    }

    private <T extends MenuItem> T wired(T item, Command command) {
        item.setId("item-" + command.id());
        item.setText(wording.say(command.textKey()));
        command.named().ifPresent(words -> subscriptions.watch(words, item::setText));
        item.getProperties().put(TIP, wording.say(command.tipKey()));
        item.setOnAction(event -> command.action().run());
        item.disableProperty().bind(command.unavailable());
        command.keys().ifPresent(item::setAccelerator);
        return item;
    }
}
