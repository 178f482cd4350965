package org.sagwise.ui.lesson.author;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.lesson.LessonButton;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.ProgressBook;
import org.sagwise.ui.text.Wording;

/** Lessons of one's own, over those that come with the program. */
public final class OwnShelf extends VBox {

    private final AuthorController desk;
    private final LessonSession room;
    private final ProgressBook book;
    private final Commands commands;
    private final Runnable showAll;
    private final Controls controls;
    private final Wording wording;

    /**
     * @param showAll shows everything that is to be mended
     */
    public OwnShelf(
            AuthorController desk,
            LessonSession room,
            ProgressBook book,
            Commands commands,
            Runnable showAll,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.desk = desk;
        this.room = room;
        this.book = book;
        this.commands = commands;
        this.showAll = showAll;
        this.controls = controls;
        this.wording = wording;
        setId("own-lessons");
        getStyleClass().add("lesson-list");
        subscriptions.watch(desk.lessonsProperty(), now -> show());
        subscriptions.onChange(desk.authoring(), this::show);
        subscriptions.onChange(book.property(), this::show);
    }

    private void show() {
        getChildren().clear();
        Optional<Path> folder = desk.folderProperty().get();
        if (folder.isPresent()) {
            Label heading = new Label(wording.say("author.folder", folder.get().getFileName()));
            heading.getStyleClass().add("section-title");
            Tip.put(heading, folder.get().toString());
            getChildren().add(heading);
            desk.lessonsProperty().get().forEach(it -> getChildren().add(button(it)));
            getChildren()
                    .add(new FlowPane(
                            4,
                            4,
                            authoring(),
                            controls.button(commands.get("lessons-open")),
                            controls.button(commands.get("lessons-away"))));
        } else {
            getChildren().add(controls.button(commands.get("lessons-open")));
        }
    }

    private ToggleButton authoring() {
        ToggleButton toggle =
                new ToggleButton(wording.say(commands.get("author").textKey()));
        toggle.setId("button-author");
        toggle.setSelected(desk.authoring().getValue());
        controls.explain(toggle, commands.get("author"));
        toggle.setOnAction(event -> commands.get("author").action().run());
        return toggle;
    }

    private Button button(OwnLesson own) {
        int faults = own.checked().faults().size();
        boolean writes = desk.authoring().getValue();
        if (own.lesson().isPresent() && !(writes && faults > 0)) {
            return LessonButton.of(own.lesson().get(), room, book, wording);
        }
        String title = own.lesson()
                .map(it -> it.title().in(wording.locale()))
                .orElse(own.checked().id());
        String key = own.isBehind() ? "author.broken" : "author.to-mend";
        LessonButton button = new LessonButton(own.id(), title, wording.say(key, faults), "lesson-trouble", wording);
        button.setOnAction(event -> own.lesson().ifPresentOrElse(room::start, showAll));
        return button;
    }
}
