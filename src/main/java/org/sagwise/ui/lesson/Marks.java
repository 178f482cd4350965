package org.sagwise.ui.lesson;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.LessonPlayer;

/** A mark for every step: done, shown by the program, still to come, and where one is. */
final class Marks extends HBox {

    private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");
    private static final PseudoClass SHOWN = PseudoClass.getPseudoClass("shown");
    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    Marks() {
        setId("lesson-marks");
        getStyleClass().add("lesson-marks");
        setAccessibleRole(AccessibleRole.TEXT);
    }

    /**
     * @param spoken the same in words
     */
    void show(LessonPlayer now, String spoken) {
        setAccessibleText(spoken);
        List<Answers> all = now.allAnswers();
        while (getChildren().size() > all.size()) {
            getChildren().remove(all.size());
        }
        while (getChildren().size() < all.size()) {
            Region mark = new Region();
            mark.getStyleClass().add("lesson-mark");
            HBox.setHgrow(mark, Priority.ALWAYS);
            getChildren().add(mark);
        }
        for (int i = 0; i < all.size(); i++) {
            var mark = getChildren().get(i);
            mark.pseudoClassStateChanged(DONE, all.get(i).state() == Answers.State.DONE);
            mark.pseudoClassStateChanged(SHOWN, all.get(i).state() == Answers.State.SHOWN);
            mark.pseudoClassStateChanged(HERE, i == now.at());
        }
    }
}
