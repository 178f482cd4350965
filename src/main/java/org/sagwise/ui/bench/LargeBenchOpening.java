package org.sagwise.ui.bench;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.Preparation;
import org.sagwise.ui.settings.LooksModel;

/**
 * Sets large benches out behind the scenes before they are opened. Until then the present one stays
 * and can be worked on, and the opening can be called off.
 */
public final class LargeBenchOpening implements Preparation {

    /** Up to so many parts a bench is set out in less time than the eye notices. */
    static final int QUICK_PARTS = 120;

    /** Layouts of large benches fit any room. */
    private static final double ANY_SIDE = 1000;

    private final Layouts layouts;
    private final LooksModel looks;
    private final Executor behindTheScenes;
    private final Executor front;
    private final ReadOnlyObjectWrapper<Optional<Scenario>> underWay = new ReadOnlyObjectWrapper<>(Optional.empty());
    private int edition;

    /**
     * @param layouts takes what was set out
     * @param front the thread of the window, to which all methods belong
     */
    public LargeBenchOpening(Layouts layouts, LooksModel looks, Executor behindTheScenes, Executor front) {
        this.layouts = layouts;
        this.looks = looks;
        this.behindTheScenes = behindTheScenes;
        this.front = front;
    }

    /** What is being made ready. */
    public ReadOnlyObjectProperty<Optional<Scenario>> underWayProperty() {
        return underWay.getReadOnlyProperty();
    }

    /** Gives it up; the present bench stays. */
    public void callOff() {
        edition++;
        underWay.set(Optional.empty());
    }

    @Override
    public void whenReady(Scenario scenario, Runnable then) {
        callOff();
        if (scenario.parts().size() <= QUICK_PARTS) {
            then.run();
            return;
        }
        int mine = edition;
        Layouts.Asked asked =
                new Layouts.Asked(scenario, looks.get().textScale(), looks.get().drawing());
        underWay.set(Optional.of(scenario));
        behindTheScenes.execute(() -> {
            // A failure is told in front, as any other failure of the window.
            var layout = CompletableFuture.supplyAsync(() -> asked.layout(ANY_SIDE, ANY_SIDE), Runnable::run);
            front.execute(() -> take(mine, asked, layout, then));
        });
    }

    private void take(int given, Layouts.Asked asked, CompletableFuture<BenchLayout> layout, Runnable then) {
        if (given == edition) {
            underWay.set(Optional.empty());
            layouts.keep(asked, layout.join());
            then.run();
        }
    }
}
