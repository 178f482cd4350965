package org.sagwise.ui.lesson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import org.sagwise.lesson.Lesson;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The menus that list lessons: all there are, and folders of one's own. */
public final class LearnMenu {

    private final LessonShelf shelf;
    private final LessonSession room;
    private final Commands commands;
    private final Consumer<Path> openFolder;
    private final Controls controls;
    private final Wording wording;

    private LearnMenu(
            LessonShelf shelf,
            LessonSession room,
            Commands commands,
            Consumer<Path> openFolder,
            Controls controls,
            Wording wording) {
        this.shelf = shelf;
        this.room = room;
        this.commands = commands;
        this.openFolder = openFolder;
        this.controls = controls;
        this.wording = wording;
    }

    /**
     * The menus by their ids in the table of menus.
     *
     * @param folders folders that were opened lately
     * @param openFolder opens one of them
     */
    public static Map<String, Menu> of(
            LessonShelf shelf,
            LessonSession room,
            ObservableValue<List<Path>> folders,
            Consumer<Path> openFolder,
            Commands commands,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        LearnMenu learn = new LearnMenu(shelf, room, commands, openFolder, controls, wording);
        Menu lessons = controls.menu("lessons");
        subscriptions.watch(shelf.lessonsProperty(), all -> learn.list(lessons));
        subscriptions.onChange(shelf.ownProperty(), () -> learn.list(lessons));
        Menu recent = controls.menu("lessons-recent");
        subscriptions.watch(folders, now -> learn.recent(recent, now));
        return Map.of("lessons", lessons, "lessons-recent", recent);
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
            item.setOnAction(event -> openFolder.accept(folder));
            menu.getItems().add(item);
        }
        menu.setDisable(menu.getItems().isEmpty());
        menu.getItems().addAll(controls.line(), controls.item(commands.get("forget-lessons")));
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
