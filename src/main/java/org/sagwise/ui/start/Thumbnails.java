package org.sagwise.ui.start;

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
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Snapshot;

/** Small pictures of the examples, painted behind the scenes. */
public final class Thumbnails {

    /** Width and height in pixels of a screen of usual density. */
    public static final int WIDTH = 176;

    public static final int HEIGHT = 84;

    /** Painted larger, for screens with more pixels. */
    private static final int DENSITY = 2;

    private final Function<Scenario, Assessment> assess;
    private final Executor behindTheScenes;
    private final Map<Example, ReadOnlyObjectWrapper<Image>> pictures;

    /**
     * @param assess computes everything about a scenario
     * @param behindTheScenes where pictures are painted
     */
    public Thumbnails(List<Example> examples, Function<Scenario, Assessment> assess, Executor behindTheScenes) {
        this.assess = assess;
        this.behindTheScenes = behindTheScenes;
        this.pictures = examples.stream()
                .collect(Collectors.toUnmodifiableMap(each -> each, each -> new ReadOnlyObjectWrapper<>()));
    }

    /** The picture of an example; null until it is painted. */
    public ReadOnlyObjectProperty<Image> of(Example example) {
        return pictures.get(example).getReadOnlyProperty();
    }

    /** Paints all pictures in a theme, those first that stand first. */
    public void paint(List<Example> inOrder, Theme theme) {
        inOrder.forEach(each -> behindTheScenes.execute(() -> paint(each, theme)));
    }

    private void paint(Example example, Theme theme) {
        Image painted = painted(example.scenario(Locale.ENGLISH), theme);
        Platform.runLater(() -> pictures.get(example).set(painted));
    }

    private Image painted(Scenario scenario, Theme theme) {
        BenchScene scene = BenchScene.of(
                        assess.apply(scenario.released()), BenchLayout.of(scenario), theme, Locale.ROOT)
                .with(Set.of());
        BenchView view = BenchView.fit(scene.layout().bounds(), WIDTH * DENSITY, HEIGHT * DENSITY);
        return Snapshot.of(scene, view);
    }
}
