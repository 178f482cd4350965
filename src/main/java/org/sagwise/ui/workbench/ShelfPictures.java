package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.image.Image;
import org.sagwise.assessment.Assessment;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.ui.kit.SmallPictures;
import org.sagwise.ui.kit.Snapshot;

/** Small pictures of what stands on the shelf, painted behind the scenes by the bench's painter. */
public final class ShelfPictures {

    /** Width and height in pixels of a screen of usual density. */
    static final int WIDTH = 58;

    static final int HEIGHT = 32;

    private static final int DENSITY = 2;
    private static final int MARGIN = 8;
    private static final double QUARTER = 90;

    private final SmallPictures<ShelfItem> pictures;

    /**
     * @param assess computes everything about a scenario
     * @param behindTheScenes where pictures are painted
     */
    public ShelfPictures(List<ShelfItem> items, Function<Scenario, Assessment> assess, Executor behindTheScenes) {
        pictures = new SmallPictures<>(items, (item, theme) -> painted(item.part(), assess, theme), behindTheScenes);
    }

    /** The picture of what stands there; null until it is painted. */
    ReadOnlyObjectProperty<Image> of(ShelfItem item) {
        return pictures.of(item);
    }

    /** Paints all pictures in a theme. */
    public void paint(List<ShelfItem> items, Theme theme) {
        pictures.paint(items, theme);
    }

    private static Image painted(Part part, Function<Scenario, Assessment> assess, Theme theme) {
        boolean lies = part.kind() == PartKind.CELL || part.kind() == PartKind.COIL || part.kind() == PartKind.RESISTOR;
        Scenario alone = Scenario.of("", List.of(part), List.of())
                .withPlacement(Map.of(part.id(), new Placement(0, 0, lies ? QUARTER : 0)));
        BenchScene scene = BenchScene.of(assess.apply(alone), BenchLayout.of(alone), theme, Locale.ROOT)
                .with(Set.of());
        Box area = scene.layout().parts().get(0).body().grown(MARGIN).box();
        return Snapshot.of(scene, BenchView.fit(area, WIDTH * DENSITY, HEIGHT * DENSITY));
    }
}
