package org.sagwise.ui.demo;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import javafx.scene.layout.VBox;

import org.sagwise.scenario.Scenario;
import org.sagwise.ui.file.Documents;
import org.sagwise.ui.text.Wording;

/** An example as a picture with its title; pressing it puts the example on the bench. */
final class ExampleButton extends Button {

    private final Example example;
    private final VBox content;

    ExampleButton(Example example, Thumbnails thumbnails, Documents documents, Wording wording) {
        this.example = example;
        Scenario scenario = example.scenario(wording.locale());
        String title = scenario.title();
        setId("example-" + example.name());
        getStyleClass().add("example");
        setAccessibleText(wording.say("examples.spoken", title));
        setTooltip(new Tooltip(wording.say("examples.tip", title)));
        ImageView picture = new ImageView();
        picture.setFitWidth(Thumbnails.WIDTH);
        picture.setFitHeight(Thumbnails.HEIGHT);
        picture.imageProperty().bind(thumbnails.of(example));
        Label name = new Label(title);
        name.setWrapText(true);
        name.getStyleClass().add("example-title");
        content = new VBox(picture, name);
        content.getStyleClass().add("example-content");
        setGraphic(content);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.TOP_LEFT);
        setMaxWidth(Double.MAX_VALUE);
        setOnAction(event -> documents.openExample(scenario));
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** As high as the title needs that is wrapped to the width; a button itself would guess. */
    @Override
    protected double computePrefHeight(double width) {
        double inside = width < 0 ? content.prefWidth(-1) : width - across();
        return snappedTopInset() + content.prefHeight(inside) + snappedBottomInset();
    }

    private double across() {
        return snappedLeftInset() + snappedRightInset();
    }

    boolean shows(Scenario present) {
        return example.is(present);
    }
}
