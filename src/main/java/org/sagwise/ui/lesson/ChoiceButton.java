package org.sagwise.ui.lesson;

import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** One answer to choose: a number to press, and the answer in words. */
final class ChoiceButton extends Button {

    /** How an answer stands once one is chosen. */
    enum Mark {
        CHOSEN,
        RIGHT,
        WRONG
    }

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final PseudoClass RIGHT = PseudoClass.getPseudoClass("right");
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final HBox content;
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
        content = new HBox(badge, words);
        content.getStyleClass().add("choice-content");
        setGraphic(content);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.TOP_LEFT);
        setMaxWidth(Double.MAX_VALUE);
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

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** As high as the answer needs that is wrapped to the width; a button itself would guess. */
    @Override
    protected double computePrefHeight(double width) {
        double across = snappedLeftInset() + snappedRightInset();
        double inside = width < 0 ? content.prefWidth(-1) : width - across;
        return snappedTopInset() + content.prefHeight(inside) + snappedBottomInset();
    }
}
