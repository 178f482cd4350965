package org.sagwise.ui.kit;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;

/** Tells what is being done behind the scenes while the bench can be used, and lets it be called off. */
public final class WaitStrip extends HBox {

    private final Label words = new Label();

    /**
     * @param name with which the ids of its pieces begin
     * @param told what is being done; empty while nothing is
     * @param stop calls it off
     */
    public WaitStrip(String name, ObservableValue<Optional<String>> told, Stop stop, Subscriptions subscriptions) {
        setId(name);
        getStyleClass().add("felt-strip");
        setAlignment(Pos.CENTER_LEFT);
        setAccessibleRole(AccessibleRole.TEXT);
        words.setId(name + "-words");
        words.setWrapText(true);
        Button button = new Button(stop.word());
        button.setId(name + "-stop");
        button.setMinWidth(USE_PREF_SIZE);
        Tip.put(button, stop.tip());
        button.setOnAction(event -> stop.action().run());
        getChildren().addAll(new ProgressBar(), words, button);
        subscriptions.watch(told, this::show);
    }

    /**
     * How it is called off.
     *
     * @param word what stands on the button
     * @param tip what remains as it is then
     */
    public record Stop(String word, String tip, Runnable action) {}

    private void show(Optional<String> told) {
        setVisible(told.isPresent());
        setManaged(told.isPresent());
        words.setText(told.orElse(""));
        setAccessibleText(words.getText());
    }
}
