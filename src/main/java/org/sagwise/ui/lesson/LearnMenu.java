package org.sagwise.ui.lesson;

import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;

import org.sagwise.lesson.Lesson;
import org.sagwise.ui.command.Command;
import org.sagwise.ui.command.Controls;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;

import java.util.List;

/** The menu with all lessons and with what can be done in one. */
public final class LearnMenu {

    private LearnMenu() {}

    public static Menu of(
            LessonShelf shelf,
            LessonRoom room,
            LessonCommands commands,
            Command lead,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        Menu lessons = controls.menu("lessons");
        subscriptions.watch(
                shelf.lessonsProperty(),
                all -> lessons.getItems().setAll(items(all, room, wording)));
        Menu menu = controls.menu("learn", lessons, controls.line());
        commands.all().forEach(command -> menu.getItems().add(controls.item(command)));
        menu.getItems().addAll(controls.line(), controls.item(lead));
        return menu;
    }

    private static List<MenuItem> items(List<Lesson> lessons, LessonRoom room, Wording wording) {
        return lessons.stream().map(lesson -> item(lesson, room, wording)).toList();
    }

    private static MenuItem item(Lesson lesson, LessonRoom room, Wording wording) {
        String title = lesson.title().in(wording.locale());
        MenuItem item =
                new MenuItem(
                        wording.say("menu.lessons.one", lesson.evening(), title, lesson.minutes()));
        item.setId("item-lesson-" + lesson.id());
        item.setMnemonicParsing(false);
        item.setOnAction(event -> room.start(lesson));
        return item;
    }
}
