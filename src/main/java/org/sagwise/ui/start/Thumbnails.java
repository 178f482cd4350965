package org.sagwise.ui.start;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.image.Image;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.SmallPictures;
import org.sagwise.ui.kit.Snapshot;

/** Small pictures of the examples, painted behind the scenes. */
public final class Thumbnails {

    /** Width and height in pixels of a screen of usual density. */
    public static final int WIDTH = 176;

    public static final int HEIGHT = 84;

    /** Painted larger, for screens with more pixels. */
    private static final int DENSITY = 2;

    private final SmallPictures<Example> pictures;

    /**
     * @param assess computes everything about a scenario
     * @param behindTheScenes where pictures are painted
     */
    public Thumbnails(List<Example> examples, Function<Scenario, Assessment> assess, Executor behindTheScenes) {
        pictures = new SmallPictures<>(
                examples,
                (example, theme) ->
                        painted(assess.apply(example.scenario(Locale.ENGLISH).released()), theme),
                behindTheScenes);
    }

    /** The picture of an example; null until it is painted. */
    public ReadOnlyObjectProperty<Image> of(Example example) {
        return pictures.of(example);
    }

    /** Paints all pictures in a theme, those first that stand first. */
    public void paint(List<Example> inOrder, Theme theme) {
        pictures.paint(inOrder, theme);
    }

    private static Image painted(Assessment shown, Theme theme) {
        BenchScene scene = BenchScene.of(shown, BenchLayout.of(shown.scenario()), theme, Locale.ROOT)
                .with(Set.of());
        BenchView view = BenchView.fit(scene.layout().bounds(), WIDTH * DENSITY, HEIGHT * DENSITY);
        return Snapshot.of(scene, view);
    }
}
