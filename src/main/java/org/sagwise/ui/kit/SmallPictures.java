package org.sagwise.ui.kit;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.image.Image;
import org.sagwise.picture.look.Theme;

/**
 * Small pictures of many things, painted behind the scenes one after the other. Those of a theme
 * that is no longer wanted are passed over.
 *
 * @param <K> what there is a picture of
 */
public final class SmallPictures<K> {

    private final BiFunction<K, Theme, Image> painter;
    private final Executor behindTheScenes;
    private final Map<K, ReadOnlyObjectWrapper<Image>> pictures;
    private volatile int edition;

    /**
     * @param painter paints one, on whatever thread
     * @param behindTheScenes where pictures are painted
     */
    public SmallPictures(Collection<K> all, BiFunction<K, Theme, Image> painter, Executor behindTheScenes) {
        this.painter = painter;
        this.behindTheScenes = behindTheScenes;
        this.pictures =
                all.stream().collect(Collectors.toUnmodifiableMap(each -> each, each -> new ReadOnlyObjectWrapper<>()));
    }

    /** The picture of one; null until it is painted. */
    public ReadOnlyObjectProperty<Image> of(K each) {
        return pictures.get(each).getReadOnlyProperty();
    }

    /** Paints all pictures in a theme, those first that stand first. To be called in front. */
    public void paint(List<K> inOrder, Theme theme) {
        int mine = edition + 1;
        edition = mine;
        inOrder.forEach(each -> behindTheScenes.execute(() -> paint(each, theme, mine)));
    }

    private void paint(K each, Theme theme, int mine) {
        if (mine == edition) {
            Image painted = painter.apply(each, theme);
            Platform.runLater(() -> show(each, painted, mine));
        }
    }

    private void show(K each, Image painted, int mine) {
        if (mine == edition) {
            pictures.get(each).set(painted);
        }
    }
}
