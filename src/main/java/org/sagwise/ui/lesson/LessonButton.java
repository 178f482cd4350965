package org.sagwise.ui.lesson;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Lesson;
import org.sagwise.ui.kit.ContentButton;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** A lesson to begin, and how it stands with it. */
public final class LessonButton extends ContentButton {

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
        VBox content = new VBox(label(title, "example-title"), state);
        setContent(content);
        setAccessibleText(wording.say("lessons.spoken", title, how));
    }

    /** A lesson that goes on where it was left. */
    public static LessonButton of(Lesson lesson, LessonSession room, ProgressBook book, Wording wording) {
        String title = lesson.title().in(wording.locale());
        LessonStatus standing = book.standing(lesson);
        boolean done = standing.state() == LessonStatus.State.DONE;
        LessonButton button =
                new LessonButton(lesson.id(), title, how(lesson, standing, wording), done ? "done" : "quiet", wording);
        Tip.put(button, wording.say("lessons.tip", title));
        button.setOnAction(event -> room.start(lesson));
        return button;
    }

    private static String how(Lesson lesson, LessonStatus standing, Wording wording) {
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
}
