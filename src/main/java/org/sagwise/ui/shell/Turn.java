package org.sagwise.ui.shell;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;

/**
 * Whose turn it is where the bench leaves no room for two columns: the one at the left while a
 * circuit is being built, and once somebody asks for it; the readings as soon as there is something
 * to read. Both, where somebody asks for the one beside the other and the window is wide enough.
 */
final class Turn {

    private final BooleanProperty asked = new SimpleBooleanProperty();
    private final BooleanProperty both = new SimpleBooleanProperty();
    private final BooleanBinding left;

    Turn(BenchModel bench, Subscriptions subscriptions) {
        ObservableValue<Boolean> building = bench.nextStepProperty().map(step -> step != NextStep.NONE);
        left = Bindings.createBooleanBinding(() -> asked.get() || building.getValue(), asked, building);
        subscriptions.watch(building, now -> asked.set(false));
        subscriptions.watch(bench.button().downProperty(), now -> asked.set(false));
    }

    /** Whether it is the turn of the column at the left. */
    ObservableBooleanValue left() {
        return left;
    }

    /** Whether somebody wants both columns at the expense of the bench. */
    ObservableBooleanValue both() {
        return both;
    }

    /** Somebody wants something of the column at the left. */
    void ask() {
        asked.set(true);
    }

    /**
     * Somebody wants the readings, beside the other column where there is room.
     *
     * @param beside whether the other column is there
     */
    void askReadings(boolean beside) {
        both.set(beside);
        asked.set(false);
    }

    /** Somebody has done with one of the columns. */
    void leave() {
        both.set(false);
        asked.set(false);
    }
}
