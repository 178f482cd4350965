package org.sagwise.ui.inspector;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.section.CellSection;
import org.sagwise.picture.section.CellSection.Piece;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.text.Wording;

/** A window with a round cell cut open: pointing at a part, or choosing its name, says what it is for. */
public final class InsideCellWindow {

    /** What asks for it, in place of a word of the glossary. */
    public static final String ID = "inside-a-cell";

    private static final double WIDTH = 720;
    private static final double HEIGHT = 580;

    private final SideWindows windows;
    private final ReadOnlyObjectProperty<AppliedLooks> looks;
    private final Wording wording;
    private final CanvasLayer layer = new CanvasLayer(this::paint);
    private final Label title = WrappedLabel.of("", "section-title");
    private final Label text = WrappedLabel.of("", "inside-text");
    private final Label source = WrappedLabel.of("", "quiet");
    private final Map<Piece, Button> names = new EnumMap<>(Piece.class);
    private final SideWindow window = new SideWindow();
    private Optional<Piece> pointed = Optional.empty();

    public InsideCellWindow(SideWindows windows, ReadOnlyObjectProperty<AppliedLooks> looks, Wording wording) {
        this.windows = windows;
        this.looks = looks;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        StackPane picture = new StackPane(layer);
        picture.setId("inside-picture");
        picture.setMinWidth(CellSection.WIDTH);
        picture.setOnMouseMoved(event -> CellSection.at(
                        event.getX() / scale(layer.getWidth(), layer.getHeight()),
                        event.getY() / scale(layer.getWidth(), layer.getHeight()))
                .ifPresent(this::point));
        HBox.setHgrow(picture, Priority.ALWAYS);
        FlowPane list = new FlowPane();
        list.getStyleClass().add("word-links");
        for (Piece piece : Piece.values()) {
            Button name = new Button(piece.title(wording.locale()));
            name.setId("inside-" + piece.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            name.setAccessibleHelp(piece.purpose(wording.locale()));
            name.setOnAction(event -> point(piece));
            name.focusedProperty().subscribe(focused -> {
                if (focused) {
                    point(piece);
                }
            });
            names.put(piece, name);
            list.getChildren().add(name);
        }
        Label warning = WrappedLabel.of("", "caution-text");
        warning.setText(wording.say("inside.never"));
        VBox words = new VBox(list, title, text, source, warning);
        words.getStyleClass().addAll("glossary", "column");
        words.setPrefWidth(WIDTH / 2);
        HBox content = new HBox(picture, words);
        subscriptions.onChange(looks, layer::repaint);
        point(pointed.orElse(Piece.CAN));
        return windows.open(wording.say("inside.title"), content, WIDTH, HEIGHT, Modality.NONE, subscriptions);
    }

    private void point(Piece piece) {
        pointed = Optional.of(piece);
        title.setText(piece.title(wording.locale()));
        text.setText(piece.purpose(wording.locale()));
        source.setText(wording.say("inside.source", piece.source(wording.locale())));
        layer.repaint();
    }

    private static double scale(double width, double height) {
        return Math.min(width / CellSection.WIDTH, height / CellSection.HEIGHT);
    }

    private void paint(Pen surface, double width, double height) {
        ThemedPen pen = new ThemedPen(surface, looks.get().theme(), looks.get().textScale());
        pen.scaled(scale(width, height), 0, 0, () -> CellSection.paint(pen, pointed));
    }
}
