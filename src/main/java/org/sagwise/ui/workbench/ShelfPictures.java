package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
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
import org.sagwise.ui.kit.Snapshot;

/** Small pictures of what stands on the shelf, painted behind the scenes by the bench's painter. */
public final class ShelfPictures {

    /** Width and height in pixels of a screen of usual density. */
    static final int WIDTH = 58;

    static final int HEIGHT = 32;

    private static final int DENSITY = 2;
    private static final int MARGIN = 8;
    private static final double QUARTER = 90;

    private final Function<Scenario, Assessment> assess;
    private final Executor behindTheScenes;
    private final Map<String, ReadOnlyObjectWrapper<Image>> pictures;

    /**
     * @param assess computes everything about a scenario
     * @param behindTheScenes where pictures are painted
     */
    public ShelfPictures(List<ShelfItem> goods, Function<Scenario, Assessment> assess, Executor behindTheScenes) {
        this.assess = assess;
        this.behindTheScenes = behindTheScenes;
        this.pictures = goods.stream()
                .collect(Collectors.toUnmodifiableMap(ShelfItem::name, each -> new ReadOnlyObjectWrapper<>()));
    }

    /** The picture of a good; null until it is painted. */
    ReadOnlyObjectProperty<Image> of(ShelfItem good) {
        return pictures.get(good.name()).getReadOnlyProperty();
    }

    /** Paints all pictures in a theme. */
    public void paint(List<ShelfItem> goods, Theme theme) {
        goods.forEach(each -> behindTheScenes.execute(() -> paint(each, theme)));
    }

    private void paint(ShelfItem good, Theme theme) {
        Image painted = painted(good.part(), theme);
        Platform.runLater(() -> pictures.get(good.name()).set(painted));
    }

    private Image painted(Part part, Theme theme) {
        boolean lies = part.kind() == PartKind.CELL || part.kind() == PartKind.COIL || part.kind() == PartKind.RESISTOR;
        Scenario alone = Scenario.of("", List.of(part), List.of())
                .withPlacement(Map.of(part.id(), new Placement(0, 0, lies ? QUARTER : 0)));
        BenchScene scene = BenchScene.of(assess.apply(alone), BenchLayout.of(alone), theme, Locale.ROOT)
                .with(Set.of());
        Box area = scene.layout().parts().get(0).body().grown(MARGIN).box();
        return Snapshot.of(scene, BenchView.fit(area, WIDTH * DENSITY, HEIGHT * DENSITY));
    }
}
