package org.sagwise.ui.bench;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.Preparation;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.settings.LooksModel;

/**
 * Sets large benches out behind the scenes before they are shown: when they are opened, and when they were changed.
 * Until then the present one stays, and it can be called off.
 */
public final class LargeBenchOpening implements Preparation {

    /** Up to so many parts a bench is set out in less time than the eye notices. */
    static final int QUICK_PARTS = 120;

    /** The same for notes: each looks for a free place among all others. */
    private static final int QUICK_NOTES = 40;

    /** Layouts of large benches fit any room. */
    private static final double ANY_SIDE = 1000;

    private final Layouts layouts;
    private final LooksModel looks;
    private final LatestTask task;
    private final ReadOnlyObjectWrapper<Optional<Scenario>> underWay = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * @param layouts takes what was set out
     * @param threads where it is set out, and the thread of the window, to which all methods belong
     */
    public LargeBenchOpening(Layouts layouts, LooksModel looks, Threads threads) {
        this.layouts = layouts;
        this.looks = looks;
        this.task = new LatestTask(threads);
        // However it ended, be it by a failure: nothing may stand there as under way any more.
        task.stateProperty().subscribe(now -> {
            if (now != LatestTask.State.WORKING) {
                underWay.set(Optional.empty());
            }
        });
    }

    /** What is being made ready. */
    public ReadOnlyObjectProperty<Optional<Scenario>> underWayProperty() {
        return underWay.getReadOnlyProperty();
    }

    /** Gives it up; the present bench stays. */
    public void callOff() {
        task.callOff();
    }

    /** Whether a bench is set out in less time than the eye notices. */
    static boolean isQuick(Scenario scenario) {
        return scenario.parts().size() <= QUICK_PARTS && scenario.notes().size() <= QUICK_NOTES;
    }

    @Override
    public void whenReady(Scenario scenario, Runnable then) {
        callOff();
        if (isQuick(scenario)) {
            then.run();
            return;
        }
        Layouts.Asked asked =
                Layouts.Asked.of(scenario, looks.get(), looks.get().drawing());
        underWay.set(Optional.of(scenario));
        task.ask(() -> asked.layout(ANY_SIDE, ANY_SIDE), layout -> {
            layouts.keep(asked, layout);
            then.run();
        });
    }
}
