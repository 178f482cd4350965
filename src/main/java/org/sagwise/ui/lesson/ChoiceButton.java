package org.sagwise.ui.lesson;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.ui.kit.ContentButton;

/** One answer to choose: a number to press, and the answer in words. */
final class ChoiceButton extends ContentButton {

    /** How an answer stands once one is chosen. */
    enum Mark {
        CHOSEN,
        RIGHT,
        WRONG
    }

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final PseudoClass RIGHT = PseudoClass.getPseudoClass("right");
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final Label badge;

    ChoiceButton(int place, LiveText words) {
        String number = String.valueOf(place + 1);
        setId("choice-" + number);
        getStyleClass().add("choice");
        badge = new Label(number);
        badge.getStyleClass().add("choice-number");
        badge.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        HBox content = new HBox(badge, words);
        content.getStyleClass().add("choice-content");
        setContent(content);
        setAccessibleText(number + ": " + words.said().replace("*", ""));
    }

    /** Marks it, with a sign as well as with a colour. */
    void mark(Mark mark) {
        pseudoClassStateChanged(CHOSEN, mark == Mark.CHOSEN);
        pseudoClassStateChanged(RIGHT, mark == Mark.RIGHT);
        pseudoClassStateChanged(WRONG, mark == Mark.WRONG);
        if (mark != Mark.CHOSEN) {
            badge.setText(mark == Mark.RIGHT ? "✓" : "✗");
        }
    }
}
