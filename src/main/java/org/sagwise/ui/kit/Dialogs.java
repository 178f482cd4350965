package org.sagwise.ui.kit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** Makes dialogs in our words and looks. Every button is named by what it does. */
public final class Dialogs {

    private final Stage owner;
    private final LooksModel looks;
    private final Wording wording;

    public Dialogs(Stage owner, LooksModel looks, Wording wording) {
        this.owner = owner;
        this.looks = looks;
        this.wording = wording;
    }

    public Wording wording() {
        return wording;
    }

    /** A button that agrees; Enter works it. */
    public ButtonType agree(String key) {
        return new ButtonType(wording.say(key), ButtonBar.ButtonData.OK_DONE);
    }

    /** A button beside the one that agrees. */
    public ButtonType other(String key) {
        return new ButtonType(wording.say(key), ButtonBar.ButtonData.NO);
    }

    /** A button that leaves everything as it is; Escape works it. */
    public ButtonType leave(String key) {
        return new ButtonType(wording.say(key), ButtonBar.ButtonData.CANCEL_CLOSE);
    }

    /**
     * Asks something and waits.
     *
     * @param id for looking the dialog up
     * @param title what the dialog is about, also its heading
     * @param content what it says
     * @param answers its buttons
     * @return the button that was pressed; empty if the dialog was closed
     */
    public Optional<ButtonType> ask(String id, String title, Node content, List<ButtonType> answers) {
        Subscriptions subscriptions = new Subscriptions();
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(owner);
        dialog.setTitle(title);
        dialog.setResizable(true);
        var pane = dialog.getDialogPane();
        pane.setId(id);
        Label heading = new Label(title);
        heading.setWrapText(true);
        heading.getStyleClass().add("dialog-heading");
        pane.setHeader(heading);
        if (content instanceof Label) {
            // In one line it would ask for more than the screen, and for no height for what wraps then.
            content.getStyleClass().add("dialog-words");
        }
        pane.setContent(content);
        pane.getButtonTypes().setAll(answers);
        for (ButtonType answer : answers) {
            Button button = (Button) pane.lookupButton(answer);
            button.setId(id + "-" + answer.getButtonData().name().toLowerCase(Locale.ROOT));
            ButtonBar.setButtonUniformSize(button, false);
        }
        StyleSheets.follow(looks, pane.getStylesheets(), subscriptions);
        stayOverOwner(dialog, subscriptions);
        Optional<ButtonType> pressed = dialog.showAndWait();
        subscriptions.close();
        return pressed;
    }

    /** Some window managers move and size the owner only after it was shown. */
    private void stayOverOwner(Dialog<?> dialog, Subscriptions subscriptions) {
        Runnable centre = () -> {
            dialog.setX(owner.getX() + (owner.getWidth() - dialog.getWidth()) / 2);
            dialog.setY(owner.getY() + (owner.getHeight() - dialog.getHeight()) / 2);
        };
        dialog.setOnShown(shown -> {
            // Before its first layout a dialog does not know how high its words are.
            Platform.runLater(() -> {
                if (fit(dialog)) {
                    centre.run();
                }
            });
            subscriptions.onChange(owner.xProperty(), centre);
            subscriptions.onChange(owner.yProperty(), centre);
            subscriptions.onChange(owner.widthProperty(), centre);
            subscriptions.onChange(owner.heightProperty(), centre);
        });
    }

    /** What has more to say than the screen is high is scrolled, so that its buttons stay in reach. */
    private boolean fit(Dialog<?> dialog) {
        double room =
                Screen.getScreensForRectangle(owner.getX(), owner.getY(), owner.getWidth(), owner.getHeight()).stream()
                        .findFirst()
                        .orElse(Screen.getPrimary())
                        .getVisualBounds()
                        .getHeight();
        var pane = dialog.getDialogPane();
        if (pane.prefHeight(pane.getWidth()) <= room) {
            return false;
        }
        Node content = pane.getContent();
        if (!(content instanceof ScrollPane)) {
            pane.setContent(null);
            pane.setContent(PlainScroll.of(content, "dialog-scroll"));
        }
        dialog.setHeight(room);
        return true;
    }

    /** Says something; there is one button to go on. */
    public void tell(String id, String title, Node content) {
        ask(id, title, content, List.of(leave("dialog.close")));
    }
}
