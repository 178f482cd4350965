package org.sagwise.ui.lesson;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;

import org.sagwise.lesson.Lesson;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.scroll.FocusScroll;
import org.sagwise.ui.text.Wording;

import java.util.List;

/** All lessons, evening by evening; pressing one begins it. */
public final class LessonList extends ScrollPane {

    private final LessonRoom room;
    private final ProgressBook book;
    private final Wording wording;
    private final VBox list = new VBox();

    public LessonList(
            LessonShelf shelf,
            LessonRoom room,
            ProgressBook book,
            Wording wording,
            Subscriptions subscriptions) {
        this.room = room;
        this.book = book;
        this.wording = wording;
        setId("lessons");
        getStyleClass().addAll("plain-scroll", "examples");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        list.getStyleClass().addAll("column", "lesson-list");
        setContent(list);
        FocusScroll.in(this, subscriptions);
        subscriptions.watch(shelf.lessonsProperty(), this::show);
        subscriptions.onChange(book.property(), () -> show(shelf.lessonsProperty().get()));
    }

    private void show(List<Lesson> lessons) {
        list.getChildren().clear();
        int evening = 0;
        for (Lesson lesson : lessons) {
            if (lesson.evening() != evening) {
                evening = lesson.evening();
                Label heading = new Label(wording.say("lessons.evening", evening));
                heading.getStyleClass().add("section-title");
                list.getChildren().add(heading);
            }
            list.getChildren().add(new Entry(lesson));
        }
    }

    /** One lesson to begin. */
    private final class Entry extends Button {

        private final VBox content;

        Entry(Lesson lesson) {
            String title = lesson.title().in(wording.locale());
            setId("lesson-" + lesson.id());
            getStyleClass().add("example");
            Label name = label(title, "example-title");
            String minutes = wording.say("lessons.minutes", lesson.minutes());
            Standing standing = book.standing(lesson);
            String how =
                    switch (standing.state()) {
                        case FRESH -> minutes;
                        case BEGUN ->
                                wording.say("lessons.begun", standing.step(), standing.steps());
                        case DONE -> wording.say("lessons.done");
                    };
            Label state = label(how, standing.state() == Standing.State.DONE ? "done" : "quiet");
            state.setId("standing-" + lesson.id());
            content = new VBox(name, state);
            setGraphic(content);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            setAlignment(Pos.TOP_LEFT);
            setMaxWidth(Double.MAX_VALUE);
            setAccessibleText(wording.say("lessons.spoken", title, how));
            String goal = lesson.goal().in(wording.locale());
            setTooltip(new Tooltip(wording.say("lessons.tip", title, goal)));
            setOnAction(event -> room.start(lesson));
        }

        private Label label(String words, String style) {
            Label label = new Label(words);
            label.setWrapText(true);
            label.getStyleClass().add(style);
            return label;
        }

        @Override
        public Orientation getContentBias() {
            return Orientation.HORIZONTAL;
        }

        /** As high as the title needs that is wrapped to the width; a button would guess. */
        @Override
        protected double computePrefHeight(double width) {
            double across = snappedLeftInset() + snappedRightInset();
            double inside = width < 0 ? content.prefWidth(-1) : width - across;
            return snappedTopInset() + content.prefHeight(inside) + snappedBottomInset();
        }
    }
}
