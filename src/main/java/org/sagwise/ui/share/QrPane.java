package org.sagwise.ui.share;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.file.ShareText;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.QrPicture;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;

/** The share text as a QR code, for a telephone or a sheet of paper; or why there is none. */
final class QrPane extends VBox {

    private static final double SIDE = 220;

    private final Scenario scenario;
    private final Wording wording;
    private final Exports exports;
    private final ImageView picture = new ImageView();
    private final Label state = new Label();
    private final FlowPane buttons = new FlowPane();
    private byte[] png = new byte[0];

    QrPane(Scenario scenario, Wording wording, Exports exports, LatestTask latest) {
        this.scenario = scenario;
        this.wording = wording;
        this.exports = exports;
        setId("qr");
        getStyleClass().add("qr-pane");
        Label title = new Label(wording.say("qr.title"));
        title.getStyleClass().add("section-title");
        picture.setId("qr-picture");
        picture.setFitWidth(SIDE);
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        picture.setAccessibleText(wording.say("qr.title"));
        state.setId("qr-state");
        state.setWrapText(true);
        state.setMaxWidth(SIDE);
        state.setMinHeight(USE_PREF_SIZE);
        state.getStyleClass().add("quiet");
        buttons.getStyleClass().add("option-row");
        buttons.setPrefWrapLength(SIDE);
        buttons.getChildren().setAll(button("copy", this::copy), button("save", this::save));
        getChildren().setAll(title, picture, state, new WorkLine("qr", latest, state, wording).keepingRoom(), buttons);
        show(false);
        latest.ask(this::made, this::show);
    }

    private Button button(String word, Runnable action) {
        Button button = new Button(wording.say("qr." + word));
        button.setId("qr-" + word);
        Tip.put(button, wording.say("qr." + word + ".tip"));
        button.setOnAction(event -> action.run());
        return button;
    }

    private void show(boolean there) {
        picture.setVisible(there);
        picture.setManaged(there);
        buttons.setVisible(there);
        buttons.setManaged(there);
    }

    /** What came of it: a picture, or why there is none. */
    private record Made(Optional<byte[]> png, String why) {}

    private Made made() {
        Optional<String> text = ShareText.of(scenario);
        if (text.isEmpty()) {
            return new Made(Optional.empty(), wording.say("share.too-large", ShareText.MOST_CHARACTERS / 1024));
        }
        return QrPicture.of(text.get(), scenario.title(), wording.locale())
                .map(code -> new Made(Optional.of(png(code)), wording.say("qr.state")))
                .orElseGet(() -> new Made(
                        Optional.empty(), wording.say("qr.too-large", text.get().length(), QrPicture.MOST_CHARACTERS)));
    }

    private static byte[] png(QrPicture code) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            code.write(PictureFormat.PNG, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private void show(Made made) {
        state.setText(made.why());
        made.png().ifPresent(bytes -> {
            png = bytes;
            picture.setImage(new Image(new ByteArrayInputStream(bytes)));
        });
        show(made.png().isPresent());
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putImage(picture.getImage());
        Clipboard.getSystemClipboard().setContent(content);
        state.setText(wording.say("qr.copied"));
    }

    private void save() {
        exports.save(getScene().getWindow(), wording.say("qr.file", scenario.title()), PictureFormat.PNG.ending(), png)
                .ifPresent(state::setText);
    }
}
