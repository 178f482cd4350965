package org.sagwise.ui.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Part;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Painting;
import org.sagwise.ui.kit.PictureLayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;

/**
 * A second bench to compare with: looked at, not worked on. It is on one clock with the bench
 * beside it.
 */
public final class BesidePane extends BorderPane {

    private final LooksModel looks;
    private final Wording wording;
    private final Label title = new Label();
    private final PictureLayer<Painting> canvas;
    private Optional<Assessment> shown = Optional.empty();
    private volatile Optional<SetOut> setOut = Optional.empty();

    /** A bench as it was set out for a size. */
    private record SetOut(Scenery scenery, double width, double height) {}

    /**
     * @param beside what is shown; nothing while it is empty
     * @param painter where it is painted
     */
    public BesidePane(
            ObservableValue<Optional<Assessment>> beside,
            BenchModel bench,
            LooksModel looks,
            Executor painter,
            Wording wording,
            Subscriptions subscriptions) {
        this.looks = looks;
        this.wording = wording;
        canvas = new PictureLayer<>(this::painting, painter, painted -> {});
        setId("beside");
        getStyleClass().addAll("bench", "beside");
        setAccessibleRole(AccessibleRole.TEXT);
        title.setId("beside-title");
        title.getStyleClass().add("beside-title");
        title.setMaxWidth(Double.MAX_VALUE);
        setTop(title);
        setCenter(canvas);
        setMinSize(0, 0);
        subscriptions.watch(beside, this::show);
        subscriptions.onChange(looks.property(), canvas::repaint);
    }

    private void show(Optional<Assessment> now) {
        setVisible(now.isPresent());
        setManaged(now.isPresent());
        shown = now;
        now.ifPresent(this::tell);
        canvas.repaint();
    }

    private void tell(Assessment now) {
        title.setText(wording.say("beside.title", now.scenario().title()));
    }

    /** Put together when it is asked for: time passes many times a second. */
    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.TEXT
                ? shown.map(this::spoken).orElse("")
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    private String spoken(Assessment now) {
        Set<String> parts = now.scenario().parts().stream().map(Part::id).collect(Collectors.toSet());
        List<String> readings = new PartTexts(wording).lit(now, Selection.of(parts, Set.of()));
        return title.getText() + ". " + String.join(". ", readings);
    }

    private Painting painting() {
        if (shown.isEmpty()) {
            return (surface, width, height) -> {};
        }
        Assessment now = shown.get();
        AppliedLooks as = looks.get();
        return (surface, width, height) -> {
            Scenery scenery = scenery(now, as, width, height);
            BenchView view = BenchView.fit(Framing.roomy(scenery.bounds()), width, height);
            scenery.paintStill(surface, view, Set.of());
            if (scenery.isMoving()) {
                scenery.paintMoving(surface, view);
            }
        };
    }

    /** Time passes many times a second; where everything lies is worked out once. */
    private Scenery scenery(Assessment now, AppliedLooks as, double width, double height) {
        Scenery scenery = setOut.filter(it -> it.width() == width && it.height() == height)
                .map(SetOut::scenery)
                .filter(it -> it.lies(now.scenario(), as))
                .map(it -> it.with(now))
                .orElseGet(() -> fresh(now, as, width, height));
        setOut = Optional.of(new SetOut(scenery, width, height));
        return scenery;
    }

    private Scenery fresh(Assessment now, AppliedLooks as, double width, double height) {
        BenchLayout layout = Layouts.Asked.of(now.scenario(), as, as.drawing()).layout(width, height);
        return Scenery.of(now, layout, as, wording.locale());
    }
}
