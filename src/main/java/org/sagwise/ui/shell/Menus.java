package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.History;
import org.sagwise.text.Languages;
import org.sagwise.ui.clock.ClockCommands;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LearnMenu;
import org.sagwise.ui.settings.AnswerOrder;
import org.sagwise.ui.settings.LooksChoice;
import org.sagwise.ui.settings.Motion;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Shown;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.EditCommands;

/** The menus of the window. */
final class Menus {

    private final Commands commands;
    private final Models models;
    private final PreferencesModel preferences;
    private final Wording wording;
    private final Controls controls;
    private final Subscriptions subscriptions;

    Menus(Commands commands, Models models, Wording wording, Subscriptions subscriptions) {
        this.commands = commands;
        this.models = models;
        this.preferences = models.preferences();
        this.wording = wording;
        this.controls = new Controls(wording, subscriptions);
        this.subscriptions = subscriptions;
    }

    MenuBar bar() {
        Menu bench = BenchMenu.of(commands, models, controls, wording, subscriptions);
        MenuBar bar = new MenuBar(file(), edit(models.bench()), bench, time(), learn(), view(), help());
        bar.setId("menus");
        bar.setUseSystemMenuBar(true);
        bar.setMinWidth(MenuBar.USE_PREF_SIZE);
        return bar;
    }

    private Menu file() {
        return controls.menu(
                "file",
                controls.item(commands.blank()),
                controls.item(commands.open()),
                recent(),
                examples(),
                controls.item(commands.shares().paste()),
                controls.item(commands.shares().measured()),
                controls.item(commands.reread()),
                controls.line(),
                controls.item(commands.save()),
                controls.item(commands.saveAs()),
                controls.line(),
                controls.item(commands.shares().share()),
                controls.item(commands.shares().post()),
                controls.item(commands.shares().picture()),
                controls.line(),
                controls.item(commands.quit()));
    }

    private Menu examples() {
        Menu menu = controls.menu("examples");
        for (Example example : models.examples()) {
            Scenario scenario = example.scenario(wording.locale());
            MenuItem item = new MenuItem(scenario.title());
            item.setId("item-example-" + example.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> models.documents().openExample(scenario));
            menu.getItems().add(item);
        }
        return menu;
    }

    private Menu recent() {
        Menu menu = controls.menu("recent");
        subscriptions.watch(preferences.property(), now -> menu.getItems().setAll(recent(now.recent())));
        return menu;
    }

    private List<MenuItem> recent(List<Path> files) {
        if (files.isEmpty()) {
            MenuItem none = new MenuItem(wording.say("menu.recent.none"));
            none.setDisable(true);
            return List.of(none);
        }
        Command forget = Command.of("forget-recent", () -> preferences.change(now -> now.withRecent(List.of())));
        return Stream.concat(files.stream().map(this::recent), Stream.of(controls.line(), controls.item(forget)))
                .toList();
    }

    private MenuItem recent(Path file) {
        MenuItem item =
                new MenuItem(wording.say("menu.recent.file", file.getFileName(), String.valueOf(file.getParent())));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> models.documents().open(file));
        return item;
    }

    private Menu edit(BenchModel bench) {
        MenuItem undo = controls.item(commands.undo());
        MenuItem redo = controls.item(commands.redo());
        subscriptions.watch(bench.historyProperty(), now -> name(now, undo, redo));
        EditCommands edits = commands.edits();
        return controls.menu(
                "edit",
                undo,
                redo,
                controls.line(),
                controls.item(edits.cut()),
                controls.item(edits.copy()),
                controls.item(edits.duplicate()),
                controls.item(edits.delete()),
                controls.item(edits.selectAll()),
                controls.item(commands.findPart()),
                controls.line(),
                controls.item(edits.card()),
                controls.item(edits.note()),
                controls.item(edits.turn()),
                controls.item(edits.flip()),
                controls.item(edits.move()),
                controls.item(edits.alignRow()),
                controls.item(edits.alignColumn()),
                controls.line(),
                controls.item(edits.plate()),
                controls.item(edits.parallel()),
                controls.item(edits.series()),
                controls.item(edits.rows()),
                controls.item(commands.sameWatts()),
                controls.line(),
                controls.item(commands.title()));
    }

    private void name(History history, MenuItem undo, MenuItem redo) {
        undo.setText(history.undoable()
                .map(edit -> wording.say("command.undo.named", edit))
                .orElseGet(() -> wording.say("command.undo")));
        redo.setText(history.redoable()
                .map(edit -> wording.say("command.redo.named", edit))
                .orElseGet(() -> wording.say("command.redo")));
    }

    private Menu time() {
        ClockCommands time = commands.time();
        return controls.menu(
                "time",
                controls.check(time.go(), models.clock().goingProperty()),
                controls.item(time.slower()),
                controls.item(time.faster()),
                controls.line(),
                controls.item(time.stepBack()),
                controls.item(time.stepOn()),
                controls.item(time.pressBack()),
                controls.item(time.pressOn()),
                controls.item(time.start()),
                controls.line(),
                controls.item(time.runDown()),
                controls.check(time.curves(), preferences.property().map(now -> now.curves() == Shown.SHOWN)),
                controls.item(time.save()),
                controls.item(time.forget()));
    }

    private Menu learn() {
        return LearnMenu.of(
                models.lessons().shelf(),
                models.lessons().room(),
                models.lessons().author(),
                preferences.property().map(now -> now.answers() == AnswerOrder.SHUFFLED),
                commands.lessons(),
                commands.author(),
                commands.lead(),
                controls,
                wording,
                subscriptions);
    }

    private Menu view() {
        return controls.menu(
                "view",
                controls.check(
                        commands.schematic(), preferences.property().map(now -> now.drawing() == Drawing.SCHEMATIC)),
                controls.check(commands.examples(), preferences.property().map(now -> now.examples() == Shown.SHOWN)),
                controls.check(commands.projector(), models.looks().projectorProperty()),
                controls.item(commands.fullScreen()),
                controls.line(),
                controls.menu("looks", looks()),
                controls.item(commands.textLarger()),
                controls.item(commands.textSmaller()),
                controls.check(
                        Command.of("less-motion", this::turnMotion),
                        preferences.property().map(now -> now.motion() == Motion.REDUCED)),
                controls.menu("language", languages()));
    }

    private MenuItem[] looks() {
        return Stream.of(LooksChoice.values()).map(this::looks).toArray(MenuItem[]::new);
    }

    private MenuItem looks(LooksChoice choice) {
        String word = choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return controls.choice(
                Command.of("looks-" + word, () -> preferences.change(now -> now.withLooks(choice))),
                preferences.property().map(now -> now.looks() == choice));
    }

    private void turnMotion() {
        preferences.change(now -> now.withMotion(now.motion() == Motion.REDUCED ? Motion.FULL : Motion.REDUCED));
    }

    private MenuItem[] languages() {
        Stream<MenuItem> named = Languages.locales().stream().map(this::language);
        return Stream.concat(Stream.of(language("language-system", "")), named).toArray(MenuItem[]::new);
    }

    /** A language under the name that its own speakers give it. */
    private MenuItem language(Locale locale) {
        MenuItem item = language("language", locale.getLanguage());
        item.setId(item.getId() + "-" + locale.getLanguage());
        item.setText(locale.getDisplayLanguage(locale));
        return item;
    }

    /**
     * @param tag code of the language; empty for that of the system
     */
    private MenuItem language(String id, String tag) {
        return controls.choice(
                Command.of(id, () -> preferences.change(now -> now.withLanguage(tag))),
                preferences.property().map(now -> now.language().equals(tag)));
    }

    private Menu help() {
        return controls.menu(
                "help",
                controls.item(commands.doors()),
                controls.item(commands.keys()),
                controls.item(commands.notice()),
                controls.item(commands.about()));
    }
}
