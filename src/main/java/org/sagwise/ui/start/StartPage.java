package org.sagwise.ui.start;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.text.Wording;

/** The opening page: three doors into the program, each with one of our benches as its picture. */
public final class StartPage {

    /** Where one can go from here. */
    public enum Door {
        LEARN("two-in-a-row"),
        BUILD("two-cells-side-by-side"),
        EXPLAIN("side-by-side-one-reversed");

        private final String example;

        Door(String example) {
            this.example = example;
        }

        /** Name of the bench in its picture. */
        public String example() {
            return example;
        }
    }

    /** Goes through a door. */
    public interface Way {
        void through(Door door);
    }

    private StartPage() {}

    /**
     * @param inWords asks for a bench in one line of words
     */
    public static void show(List<Example> examples, Thumbnails pictures, Dialogs dialogs, Way way, Runnable inWords) {
        HBox doors = new HBox();
        doors.getStyleClass().add("doors");
        Runnable[] chosen = {() -> {}};
        for (Door door : Door.values()) {
            Button button = button(door, examples, pictures, dialogs.wording());
            button.setOnAction(event -> {
                chosen[0] = () -> way.through(door);
                button.getScene().getWindow().hide();
            });
            doors.getChildren().add(button);
        }
        Button words = new Button(dialogs.wording().say("doors.words"));
        words.setId("door-words");
        words.setOnAction(event -> {
            chosen[0] = inWords;
            words.getScene().getWindow().hide();
        });
        VBox page = new VBox(doors, words);
        page.getStyleClass().add("doors-page");
        dialogs.ask("doors-dialog", dialogs.wording().say("doors.title"), page, List.of(dialogs.leave("doors.look")));
        chosen[0].run();
    }

    private static Button button(Door door, List<Example> examples, Thumbnails pictures, Wording wording) {
        String word = door.name().toLowerCase(Locale.ROOT);
        Label title = new Label(wording.say("doors." + word));
        title.getStyleClass().add("section-title");
        Label text = new Label(wording.say("doors." + word + ".text"));
        text.setWrapText(true);
        ImageView picture = new ImageView();
        picture.setFitWidth(Thumbnails.WIDTH);
        picture.setFitHeight(Thumbnails.HEIGHT);
        ExampleBenches.named(door.example(), examples)
                .ifPresent(example -> picture.imageProperty().bind(pictures.of(example)));
        VBox content = new VBox(picture, title, text);
        content.getStyleClass().add("door-content");
        DoorButton button = new DoorButton(content);
        button.setId("door-" + word);
        button.setAccessibleText(title.getText() + ". " + text.getText());
        return button;
    }

    /** As high as its words need that are wrapped to its width; a button itself would guess. */
    private static final class DoorButton extends Button {

        /** Width of its content at the usual size of text, in pixels. */
        private static final double WIDTH = 200;

        private final VBox content;

        DoorButton(VBox content) {
            this.content = content;
            content.setPrefWidth(WIDTH);
            content.setMaxWidth(WIDTH);
            setGraphic(content);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            getStyleClass().add("door");
            setMaxHeight(Double.MAX_VALUE);
        }

        @Override
        public Orientation getContentBias() {
            return Orientation.HORIZONTAL;
        }

        @Override
        protected double computePrefHeight(double width) {
            return snappedTopInset() + content.prefHeight(WIDTH) + snappedBottomInset();
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }
    }
}
