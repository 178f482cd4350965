package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.text.Languages;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** The menus of the window, as the table of menus has them, and those among them that fill themselves. */
final class Menus {

    private final Commands commands;
    private final Models models;
    private final Wording wording;
    private final Controls controls;
    private final Subscriptions subscriptions;

    Menus(Commands commands, Models models, Wording wording, Subscriptions subscriptions) {
        this.commands = commands;
        this.models = models;
        this.wording = wording;
        this.controls = new Controls(wording, subscriptions);
        this.subscriptions = subscriptions;
    }

    /**
     * @param lessons the menus of lessons, by id
     */
    MenuBar bar(Map<String, Menu> lessons) {
        Map<String, Menu> filled = new HashMap<>(lessons);
        filled.put("recent", recent());
        filled.put("examples", examples());
        filled.put("joints", joints(models.bench().work()));
        filled.put("language", languages(models.shown().preferences()));
        MenuBar bar = new MenuBar();
        controls.items("bar", commands, filled).forEach(menu -> bar.getMenus().add((Menu) menu));
        bar.setId("menus");
        bar.setUseSystemMenuBar(true);
        bar.setMinWidth(MenuBar.USE_PREF_SIZE);
        return bar;
    }

    private Menu examples() {
        Menu menu = controls.menu("examples");
        for (Example example : models.offers().examples()) {
            Scenario scenario = example.scenario(wording.locale());
            MenuItem item = new MenuItem(scenario.title());
            item.setId("item-example-" + example.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> models.files().documents().openExample(scenario));
            menu.getItems().add(item);
        }
        return menu;
    }

    private Menu recent() {
        Menu menu = controls.menu("recent");
        subscriptions.watch(
                models.shown().preferences().property(), now -> menu.getItems().setAll(recent(now.recent())));
        return menu;
    }

    private List<MenuItem> recent(List<Path> files) {
        if (files.isEmpty()) {
            MenuItem none = new MenuItem(wording.say("menu.recent.none"));
            none.setDisable(true);
            return List.of(none);
        }
        Stream<MenuItem> forget = Stream.of(controls.line(), controls.item(commands.get("forget-recent")));
        return Stream.concat(files.stream().map(this::recent), forget).toList();
    }

    private MenuItem recent(Path file) {
        MenuItem item =
                new MenuItem(wording.say("menu.recent.file", file.getFileName(), String.valueOf(file.getParent())));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> models.files().documents().open(file));
        return item;
    }

    /** A low bench has no room for the row of hands, which holds these, too. */
    private Menu joints(Workbench work) {
        Menu menu = controls.menu("joints");
        for (JointChoice choice : JointChoice.values()) {
            String word = choice.name().toLowerCase(Locale.ROOT);
            RadioMenuItem item = new RadioMenuItem(wording.say("hand.join." + word));
            item.setId("item-join-" + word);
            item.setOnAction(event -> work.hands().setJoint(choice));
            subscriptions.watch(
                    work.movesProperty(), now -> item.setSelected(work.hands().joint() == choice));
            menu.getItems().add(item);
        }
        return menu;
    }

    private Menu languages(PreferencesModel preferences) {
        Menu menu = controls.menu("language", controls.item(commands.get("language-system")));
        Languages.locales().forEach(each -> menu.getItems().add(language(each, preferences)));
        return menu;
    }

    /** A language under the name that its own speakers give it. */
    private MenuItem language(Locale locale, PreferencesModel preferences) {
        String tag = locale.getLanguage();
        MenuItem item = controls.item(Command.of("language", () -> preferences.change(now -> now.withLanguage(tag)))
                .chosen(preferences.property().map(now -> now.language().equals(tag))));
        item.setId(item.getId() + "-" + tag);
        item.setText(locale.getDisplayLanguage(locale));
        return item;
    }
}
