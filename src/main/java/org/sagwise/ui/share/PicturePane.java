package org.sagwise.ui.share;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Moment;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.picture.BenchPicture;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.scenario.Press;
import org.sagwise.ui.kit.ChoiceDialog;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;

/** A picture of the bench to export: how it is drawn, what it looks like, and off with it. */
final class PicturePane extends BorderPane {

    private static final List<PictureSize> SIZES = List.of(PictureSize.FORUM, PictureSize.PROJECTOR);

    private final Moments moments;
    private final Wording wording;
    private final Exports exports;
    private final LatestTask latest;
    private final ChoiceDialog<PictureFormat> format;
    private final ChoiceDialog<Press> press;
    private final ChoiceDialog<Drawing> drawing;
    private final ChoiceDialog<PictureSize> size;
    private final ChoiceDialog<Colours> colours;
    private final ImageView preview = new ImageView();
    private final Label state = new Label();
    private final Button copy;

    /** The themes, by their names in the bundle. */
    private enum Colours {
        LIGHT(Theme.LIGHT),
        DARK(Theme.DARK),
        HIGH_CONTRAST(Theme.HIGH_CONTRAST);

        private final Theme theme;

        Colours(Theme theme) {
            this.theme = theme;
        }
    }

    PicturePane(Moment clock, Wording wording, Exports exports, LatestTask latest, Subscriptions subscriptions) {
        this.moments = new Moments("picture", clock, wording);
        this.wording = wording;
        this.exports = exports;
        this.latest = latest;
        setId("picture");
        format = choice("format", List.of(PictureFormat.values()));
        press = choice("press", List.of(Press.HELD, Press.RELEASED));
        drawing = choice("drawing", List.of(Drawing.values()));
        colours = choice("colours", List.of(Colours.values()));
        size = new ChoiceDialog<>(
                "picture-size",
                wording.say("picture.size"),
                SIZES,
                each -> String.valueOf(each.width()),
                each -> wording.say("picture.size.value", each.width(), each.height()));
        VBox options = new VBox(format, press, moments, drawing, colours, size);
        options.getStyleClass().add("window-options");
        copy = new Button(wording.say("picture.copy"));
        copy.setId("picture-copy");
        copy.setOnAction(event -> copy());
        setLeft(options);
        setCenter(frame());
        setBottom(foot());
        List.of(press, drawing, colours, size)
                .forEach(each -> subscriptions.onChange(each.chosenProperty(), this::paint));
        subscriptions.onChange(moments.chosenProperty(), this::paint);
        paint();
    }

    private <E extends Enum<E>> ChoiceDialog<E> choice(String key, List<E> options) {
        return new ChoiceDialog<>(
                "picture-" + key,
                wording.say("picture." + key),
                options,
                PicturePane::word,
                each -> wording.say("picture." + key + "." + word(each)));
    }

    private static String word(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As large as there is room for, whatever the size of the picture. */
    private StackPane frame() {
        preview.setPreserveRatio(true);
        preview.setSmooth(true);
        preview.setId("picture-preview");
        StackPane frame = new StackPane(preview);
        frame.getStyleClass().add("picture-frame");
        frame.setMinSize(0, 0);
        preview.fitWidthProperty().bind(frame.widthProperty().subtract(24));
        preview.fitHeightProperty().bind(frame.heightProperty().subtract(24));
        return frame;
    }

    private HBox foot() {
        Button save = new Button(wording.say("export.save"));
        save.setId("picture-save");
        save.setDefaultButton(true);
        save.setOnAction(event -> save());
        state.setId("picture-state");
        return new WindowFoot(state, new WorkLine("picture", latest, state, wording), copy, save);
    }

    private void paint() {
        copy.setDisable(true);
        state.setText(wording.say("picture.painting"));
        Order order = order(PictureFormat.PNG);
        latest.ask(() -> painted(order), this::show);
    }

    private void show(byte[] png) {
        preview.setImage(new Image(new ByteArrayInputStream(png)));
        copy.setDisable(false);
        state.setText(wording.say("picture.state"));
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putImage(preview.getImage());
        Clipboard.getSystemClipboard().setContent(content);
        state.setText(wording.say("picture.copied"));
    }

    private void save() {
        state.setText(wording.say("picture.painting"));
        Order order = order(format.get());
        latest.ask(() -> painted(order), bytes -> save(order.format(), bytes));
    }

    private void save(PictureFormat wanted, byte[] bytes) {
        state.setText(exports.save(
                        getScene().getWindow(),
                        moments.get().assessment().scenario().title(),
                        wanted.ending(),
                        bytes)
                .orElse(wording.say("picture.state")));
    }

    private Order order(PictureFormat wanted) {
        return new Order(wanted, moments.get().with(press.get()), drawing.get(), colours.get().theme, size.get());
    }

    private byte[] painted(Order order) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            BenchPicture.write(
                    order.moment(),
                    order.drawing(),
                    order.format(),
                    wording.locale(),
                    order.theme(),
                    order.size(),
                    bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** How a picture is wanted. */
    private record Order(PictureFormat format, Moment moment, Drawing drawing, Theme theme, PictureSize size) {}
}
