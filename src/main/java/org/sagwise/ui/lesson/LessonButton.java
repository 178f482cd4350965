package org.sagwise.ui.lesson;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;

import org.sagwise.lesson.Lesson;
import org.sagwise.ui.text.Wording;

/** A lesson to begin, and how it stands with it. */
public final class LessonButton extends Button {

    private final VBox content;

    /**
     * @param title what it is called
     * @param how how it stands with it
     * @param style style of those words
     */
    public LessonButton(String id, String title, String how, String style, Wording wording) {
        setId("lesson-" + id);
        getStyleClass().add("example");
        Label state = label(how, style);
        state.setId("standing-" + id);
        content = new VBox(label(title, "example-title"), state);
        setGraphic(content);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.TOP_LEFT);
        setMaxWidth(Double.MAX_VALUE);
        setAccessibleText(wording.say("lessons.spoken", title, how));
    }

    /** A lesson that goes on where it was left. */
    public static LessonButton of(
            Lesson lesson, LessonRoom room, ProgressBook book, Wording wording) {
        String title = lesson.title().in(wording.locale());
        Standing standing = book.standing(lesson);
        boolean done = standing.state() == Standing.State.DONE;
        LessonButton button =
                new LessonButton(
                        lesson.id(),
                        title,
                        how(lesson, standing, wording),
                        done ? "done" : "quiet",
                        wording);
        String goal = lesson.goal().in(wording.locale());
        button.setTooltip(new Tooltip(wording.say("lessons.tip", title, goal)));
        button.setOnAction(event -> room.start(lesson));
        return button;
    }

    private static String how(Lesson lesson, Standing standing, Wording wording) {
        return switch (standing.state()) {
            case FRESH -> wording.say("lessons.minutes", lesson.minutes());
            case BEGUN -> wording.say("lessons.begun", standing.step(), standing.steps());
            case DONE -> wording.say("lessons.done");
        };
    }

    private static Label label(String words, String style) {
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
