package org.sagwise.ui.start;

import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.ContentButton;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** An example as a picture with its title; pressing it puts the example on the bench. */
final class ExampleButton extends ContentButton {

    private final Example example;

    ExampleButton(Example example, Thumbnails thumbnails, Documents documents, Wording wording) {
        this.example = example;
        Scenario scenario = example.scenario(wording.locale());
        String title = scenario.title();
        setId("example-" + example.name());
        getStyleClass().add("example");
        setAccessibleText(wording.say("examples.spoken", title));
        Tip.put(this, wording.say("examples.tip", title));
        ImageView picture = new ImageView();
        picture.setFitWidth(Thumbnails.WIDTH);
        picture.setFitHeight(Thumbnails.HEIGHT);
        picture.imageProperty().bind(thumbnails.of(example));
        Label name = new Label(title);
        name.setWrapText(true);
        name.getStyleClass().add("example-title");
        VBox content = new VBox(picture, name);
        content.getStyleClass().add("example-content");
        setContent(content);
        setOnAction(event -> documents.openExample(scenario));
    }

    boolean shows(Scenario present) {
        return example.is(present);
    }
}
