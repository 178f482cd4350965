package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Lesson;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** All lessons, those of one's own first, then evening by evening; pressing one begins it. */
public final class LessonList extends ColumnScroll {

    private final Node own;
    private final LessonSession room;
    private final ProgressBook book;
    private final Wording wording;
    private final VBox list = new VBox();
    private boolean awaited;

    /**
     * @param own what stands before the evenings: lessons of one's own
     */
    public LessonList(
            Node own,
            LessonShelf shelf,
            LessonSession room,
            ProgressBook book,
            Wording wording,
            Subscriptions subscriptions) {
        super(subscriptions, "examples");
        this.own = own;
        this.room = room;
        this.book = book;
        this.wording = wording;
        setId("lessons");
        list.getStyleClass().addAll("column", "lesson-list");
        setContent(list);
        subscriptions.watch(shelf.lessonsProperty(), this::show);
        subscriptions.onChange(
                book.property(), () -> show(shelf.lessonsProperty().get()));
    }

    /** Puts the focus on the first lesson, for who has come to learn; once there is one. */
    public void focusFirst() {
        // What is shown for the first time has no skin yet, and its content no scene.
        applyCss();
        Optional<Node> first = list.getChildren().stream()
                .filter(LessonButton.class::isInstance)
                .findFirst();
        first.ifPresent(Node::requestFocus);
        awaited = first.isEmpty();
    }

    private void show(List<Lesson> lessons) {
        list.getChildren().setAll(own);
        int evening = 0;
        for (Lesson lesson : lessons) {
            if (lesson.evening() != evening) {
                evening = lesson.evening();
                Label heading = new Label(wording.say("lessons.evening", evening));
                heading.getStyleClass().add("section-title");
                list.getChildren().add(heading);
            }
            list.getChildren().add(LessonButton.of(lesson, room, book, wording));
        }
        if (awaited) {
            focusFirst();
        }
    }
}
