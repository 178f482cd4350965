package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.part.CoilWinding;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.winding.WindingPainter;
import org.sagwise.plan.CoilOnBench;
import org.sagwise.plan.WholeWraps;
import org.sagwise.plan.WoundCoil;
import org.sagwise.plan.WoundWords;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.NamedRows;
import org.sagwise.ui.kit.PlainScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.text.Wording;

/** A form for a coil, and beside it, as one types, the coil to scale and what it comes to on the bench. */
final class WindPane extends BorderPane {

    private static final double AIR_C = 20;

    /** One cell at its nominal volts, for a bench on which nothing reaches the coil yet. */
    private static final double USUAL_V = 3.7;

    private static final double PICTURE_HEIGHT = 250;

    /** Share of the width that the form takes where letters are large. */
    private static final double LARGEST_FORM = 0.5;

    private final CoilOnBench place;
    private final Wording wording;
    private final WoundWords words;
    private final ReadOnlyObjectProperty<AppliedLooks> looks;
    private final WindForm form;
    private final CanvasLayer layer = new CanvasLayer(this::paint);
    private final StackPane picture = new StackPane(layer);
    private final NamedRows table = new NamedRows();
    private final VBox answer = new VBox();
    private final Button wind;
    private Optional<CoilWinding> found = Optional.empty();

    /**
     * @param onBench takes the edit that winds the coil so
     */
    WindPane(
            CoilOnBench place,
            ReadOnlyObjectProperty<AppliedLooks> looks,
            Consumer<SetPartKeys> onBench,
            Wording wording,
            Subscriptions subscriptions) {
        this.place = place;
        this.wording = wording;
        this.looks = looks;
        this.words = new WoundWords(QuantityFormat.forPeople(wording.locale()));
        setId("wind");
        subscriptions.watch(looks, now -> {
            // The words around the coil grow with the letters.
            picture.setMinHeight(PICTURE_HEIGHT * now.textScale());
            picture.setPrefHeight(PICTURE_HEIGHT * now.textScale());
        });
        picture.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        picture.setId("wind-picture");
        answer.getStyleClass().add("measured-result");
        wind = new Button(wording.say("wind.do"));
        wind.setId("wind-do");
        wind.setDefaultButton(true);
        wind.setMinWidth(USE_PREF_SIZE);
        wind.setOnAction(event -> found.map(place::rewound).ifPresent(onBench));
        form = new WindForm(place.catalogue(), place.winding(), place.ohm(), this::judge, wording);
        ScrollPane left = PlainScroll.of(form, "measured-form");
        left.maxWidthProperty().bind(widthProperty().multiply(LARGEST_FORM));
        setLeft(left);
        setCenter(PlainScroll.of(answer, "measured-answer"));
        setBottom(foot());
        subscriptions.onChange(looks, layer::repaint);
        judge();
    }

    private HBox foot() {
        Label hint = WrappedLabel.of(wording.say("wind.hint"), "quiet");
        hint.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(hint, Priority.ALWAYS);
        HBox foot = new HBox(hint, wind);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("window-row");
        return foot;
    }

    private void judge() {
        found = Optional.empty();
        Optional<CoilWinding> one = form.oneWrap();
        OptionalDouble wanted = form.wanted();
        if (one.isPresent() && wanted.isPresent()) {
            judge(one.get(), wanted.getAsDouble());
        } else {
            answer.getChildren().setAll(WrappedLabel.of(wording.say("wind.waiting"), "quiet"));
        }
        wind.setDisable(found.isEmpty());
    }

    private void judge(CoilWinding one, double wanted) {
        if (form.wish() == WindForm.Wish.WRAPS) {
            show(one.withWraps(wanted), Optional.empty());
            return;
        }
        OptionalDouble ohm = form.wish() == WindForm.Wish.OHM ? OptionalDouble.of(wanted) : place.ohmFor(wanted);
        if (ohm.isEmpty()) {
            form.complain(wording.say("wind.no-watts"));
            answer.getChildren().setAll(WrappedLabel.of(wording.say("wind.waiting"), "quiet"));
            return;
        }
        WholeWraps.Answer whole = WholeWraps.of(one.wire(), one.innerDiameterM(), one.legsM(), ohm.getAsDouble());
        if (whole instanceof WholeWraps.Answer.Found there) {
            show(there.nearest(), Optional.of(words.found(there, ohm.getAsDouble())));
        } else {
            form.complain(words.refused(whole, ohm.getAsDouble()));
            answer.getChildren().setAll(WrappedLabel.of(wording.say("wind.waiting"), "quiet"));
        }
    }

    private void show(CoilWinding winding, Optional<String> sentence) {
        found = Optional.of(winding);
        OptionalDouble volts = place.voltsWith(winding);
        WoundCoil coil = new WoundCoil(winding, volts.orElse(USUAL_V), AIR_C);
        List<WoundWords.Row> rows = words.rows(coil);
        table.getChildren().clear();
        rows.forEach(row -> table.add(row.label(), row.value(), "wind-" + row.key()));
        answer.getChildren().clear();
        sentence.ifPresent(it -> answer.getChildren().add(WrappedLabel.of(it, "words")));
        answer.getChildren().addAll(picture, table);
        answer.getChildren()
                .add(WrappedLabel.of(wording.say(volts.isPresent() ? "wind.volts-here" : "wind.volts-usual"), "quiet"));
        words.notes(coil).forEach(note -> answer.getChildren().add(WrappedLabel.of(note, "quiet")));
        picture.setAccessibleText(words.wire(winding) + ", " + words.wraps(winding.wraps()));
        layer.repaint();
    }

    private void paint(Pen surface, double width, double height) {
        ThemedPen pen = new ThemedPen(surface, looks.get().theme(), looks.get().textScale());
        found.ifPresent(winding -> WindingPainter.paint(
                pen, winding, QuantityFormat.forPeople(wording.locale()), new Box(0, 0, width, height)));
    }
}
