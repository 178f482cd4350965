package org.sagwise.ui.lesson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import org.sagwise.lesson.Lesson;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.author.AuthorCommands;
import org.sagwise.ui.lesson.author.AuthorController;
import org.sagwise.ui.text.Wording;

/** The menu with all lessons and with what can be done in one. */
public final class LearnMenu {

    private final LessonShelf shelf;
    private final LessonSession room;
    private final AuthorController desk;
    private final AuthorCommands author;
    private final Controls controls;
    private final Wording wording;
    private final Subscriptions subscriptions;

    private LearnMenu(
            LessonShelf shelf,
            LessonSession room,
            AuthorController desk,
            AuthorCommands author,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.shelf = shelf;
        this.room = room;
        this.desk = desk;
        this.author = author;
        this.controls = controls;
        this.wording = wording;
        this.subscriptions = subscriptions;
    }

    /**
     * @param shuffled whether the answers of a lesson that begins are shuffled
     */
    public static Menu of(
            LessonShelf shelf,
            LessonSession room,
            AuthorController desk,
            ObservableValue<Boolean> shuffled,
            LessonCommands commands,
            AuthorCommands author,
            Command lead,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        return new LearnMenu(shelf, room, desk, author, controls, wording, subscriptions)
                .menu(shuffled, commands, lead);
    }

    private Menu menu(ObservableValue<Boolean> shuffled, LessonCommands commands, Command lead) {
        Menu lessons = controls.menu("lessons");
        subscriptions.watch(shelf.lessonsProperty(), all -> list(lessons));
        subscriptions.onChange(shelf.ownProperty(), () -> list(lessons));
        Menu recent = controls.menu("lessons-recent");
        subscriptions.watch(desk.recent(), now -> recent(recent, now));
        Menu menu = controls.menu("learn", lessons, controls.line());
        commands.all().forEach(command -> menu.getItems().add(controls.item(command)));
        menu.getItems()
                .addAll(
                        controls.check(commands.shuffle(), shuffled),
                        controls.line(),
                        controls.item(author.open()),
                        recent,
                        controls.check(author.author(), desk.authoring()),
                        controls.item(author.again()),
                        controls.item(author.putAway()),
                        controls.line(),
                        controls.item(lead));
        return menu;
    }

    private void list(Menu lessons) {
        List<MenuItem> items = new ArrayList<>();
        for (Lesson own : shelf.ownProperty().get()) {
            items.add(item(own, wording.say("menu.lessons.own", title(own), own.minutes())));
        }
        if (!items.isEmpty()) {
            items.add(controls.line());
        }
        for (Lesson lesson : shelf.lessonsProperty().get()) {
            items.add(item(lesson, wording.say("menu.lessons.one", lesson.evening(), title(lesson), lesson.minutes())));
        }
        lessons.getItems().setAll(items);
    }

    private void recent(Menu menu, List<Path> folders) {
        menu.getItems().clear();
        for (Path folder : folders) {
            MenuItem item = new MenuItem(
                    wording.say("menu.recent.file", folder.getFileName(), String.valueOf(folder.getParent())));
            item.setMnemonicParsing(false);
            item.setOnAction(event -> author.openFolder().accept(folder));
            menu.getItems().add(item);
        }
        menu.setDisable(menu.getItems().isEmpty());
        menu.getItems().addAll(controls.line(), controls.item(author.forget()));
    }

    private String title(Lesson lesson) {
        return lesson.title().in(wording.locale());
    }

    private MenuItem item(Lesson lesson, String words) {
        MenuItem item = new MenuItem(words);
        item.setId("item-lesson-" + lesson.id());
        item.setMnemonicParsing(false);
        item.setOnAction(event -> room.start(lesson));
        return item;
    }
}
