package org.sagwise.ui.bench;

import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.image.Image;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Snapshot;

/** Pictures of parts that are held over the bench. Remembers the last one: hands move often. */
final class Ghost {

    private static final int MARGIN = 8;

    private final Function<Scenario, Assessment> assess;
    private final Supplier<Theme> theme;
    private Scenario lastParts = Scenario.empty();
    private double lastScale;
    private Shown last;

    /**
     * What is shown.
     *
     * @param image the picture
     * @param area what part of the bench it shows, bench units
     */
    record Shown(Image image, Box area) {}

    Ghost(Function<Scenario, Assessment> assess, Supplier<Theme> theme) {
        this.assess = assess;
        this.theme = theme;
    }

    /** The picture of some parts, each with a place, at this many pixels for a bench unit. */
    Shown of(Scenario parts, double scale) {
        if (last == null || scale != lastScale || !parts.equals(lastParts)) {
            lastParts = parts;
            lastScale = scale;
            last = painted(parts, scale);
        }
        return last;
    }

    private Shown painted(Scenario parts, double scale) {
        BenchScene scene = BenchScene.of(assess.apply(parts), BenchLayout.of(parts), theme.get(), Locale.ROOT)
                .with(Set.of());
        Box area = scene.layout().parts().stream()
                .map(PartBox::body)
                .reduce(GridBox::union)
                .orElseGet(() -> new GridBox(0, 0, 0, 0))
                .grown(MARGIN)
                .box();
        BenchView view = new BenchView(area.width() * scale, area.height() * scale, scale, area.x(), area.y());
        return new Shown(Snapshot.of(scene, view), area);
    }
}
