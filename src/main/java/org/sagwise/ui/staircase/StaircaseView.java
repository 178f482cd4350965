package org.sagwise.ui.staircase;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.PictureLayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;

/** The staircase under the bench. A step that is pointed at lights its part, and the reverse. */
public final class StaircaseView extends Pane {

    private final BenchModel bench;
    private final ObservableValue<Optional<Assessment>> beside;
    private final LooksModel looks;
    private final Wording wording;
    private final PartTexts texts;
    private final PictureLayer<Stairs> layer;
    private Optional<StaircasePainter> drawn = Optional.empty();

    /**
     * @param beside the bench whose staircase stands beside this one, on the same scale
     * @param painter where the stairs are painted
     */
    public StaircaseView(
            BenchModel bench,
            ObservableValue<Optional<Assessment>> beside,
            LooksModel looks,
            Executor painter,
            Wording wording,
            Subscriptions subscriptions) {
        this.bench = bench;
        this.beside = beside;
        this.looks = looks;
        this.wording = wording;
        this.texts = new PartTexts(wording);
        layer = new PictureLayer<>(this::stairs, painter, stairs -> drawn = stairs.painter());
        setId("staircase");
        getStyleClass().add("staircase");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(layer);
        setOnMouseMoved(this::moved);
        setOnMouseExited(event -> bench.spotlight().point(Selection.NOTHING));
        setOnMouseClicked(this::clicked);
        setOnKeyPressed(new StepWalk(bench)::pressed);
        subscriptions.onChange(bench.assessmentProperty(), this::renew);
        subscriptions.onChange(bench.button().lockedProperty(), layer::repaint);
        subscriptions.onChange(beside, layer::repaint);
        subscriptions.onChange(looks.property(), this::renew);
        subscriptions.watch(bench.spotlight().litProperty(), lit -> renew());
    }

    private void renew() {
        layer.repaint();
        setAccessibleText(wording.say(
                "staircase.accessible",
                String.join(" ", texts.lit(bench.assessment(), bench.spotlight().lit()))));
    }

    private Stairs stairs() {
        Selection lit = bench.spotlight().lit();
        StairScene scene = new StairScene(
                bench.assessment().staircase(),
                bench.assessment().scenario(),
                looks.get().theme(),
                wording.locale(),
                looks.get().textScale(),
                Emphasis.pointingAt(lit.parts(), lit.links()),
                looks.get().lineScale(),
                hush(bench));
        return new Stairs(onOneScale(scene, beside.getValue()));
    }

    /** What is to be foretold is not told beside the question. */
    static StairScene.Hush hush(BenchModel bench) {
        return bench.button().lockedProperty().get() ? StairScene.Hush.ASKED : StairScene.Hush.NONE;
    }

    /** With room for the higher of two staircases. */
    static StairScene onOneScale(StairScene scene, Optional<Assessment> other) {
        double volts = other.map(
                        it -> it.staircase().highestV() - it.staircase().lowestV())
                .orElse(0.0);
        return volts > scene.spanV() ? scene.spanning(volts) : scene;
    }

    private void moved(MouseEvent event) {
        bench.spotlight().point(litAt(event));
    }

    /** A click keeps a step picked out. */
    private void clicked(MouseEvent event) {
        requestFocus();
        bench.spotlight().show(litAt(event));
    }

    private Selection litAt(MouseEvent event) {
        return drawn.flatMap(stairs -> stairs.stepAt(event.getX(), event.getY()))
                .map(StaircaseView::lit)
                .orElse(Selection.NOTHING);
    }

    /** What a step is on the bench. */
    static Selection lit(Step step) {
        return step.link().isPresent() ? Selection.link(step.link().getAsInt()) : Selection.part(step.part());
    }

    @Override
    protected void layoutChildren() {
        layer.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
