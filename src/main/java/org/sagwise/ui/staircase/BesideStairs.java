package org.sagwise.ui.staircase;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Painting;
import org.sagwise.ui.kit.PictureLayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** The staircase of a second bench, on the scale of the first; there while that bench is there. */
public final class BesideStairs extends Pane {

    private final ObservableValue<Optional<Assessment>> beside;
    private final BenchModel first;
    private final LooksModel looks;
    private final Wording wording;
    private final PictureLayer<Painting> layer;

    /**
     * @param beside the second bench; empty while there is none
     * @param painter where the stairs are painted
     */
    public BesideStairs(
            ObservableValue<Optional<Assessment>> beside,
            BenchModel first,
            LooksModel looks,
            Executor painter,
            Wording wording,
            Subscriptions subscriptions) {
        this.beside = beside;
        this.first = first;
        this.looks = looks;
        this.wording = wording;
        layer = new PictureLayer<>(this::stairs, painter, painted -> {});
        setId("beside-staircase");
        getStyleClass().addAll("staircase", "beside");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(layer);
        setMinSize(0, 0);
        subscriptions.watch(beside, this::show);
        subscriptions.onChange(first.assessmentProperty(), layer::repaint);
        subscriptions.onChange(looks.property(), layer::repaint);
    }

    private void show(Optional<Assessment> now) {
        setVisible(now.isPresent());
        setManaged(now.isPresent());
        now.map(it -> wording.say("beside.staircase", it.scenario().title())).ifPresent(this::setAccessibleText);
        layer.repaint();
    }

    private Painting stairs() {
        return beside.getValue()
                .map(this::scene)
                .map(scene -> StaircaseView.onOneScale(scene, Optional.of(first.assessment())))
                .<Painting>map(Stairs::new)
                .orElse((surface, width, height) -> {});
    }

    private StairScene scene(Assessment now) {
        return new StairScene(
                now.staircase(),
                now.scenario(),
                looks.get().theme(),
                wording.locale(),
                looks.get().textScale(),
                Emphasis.NONE,
                looks.get().lineScale(),
                StaircaseView.hush(first));
    }

    @Override
    protected void layoutChildren() {
        layer.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
