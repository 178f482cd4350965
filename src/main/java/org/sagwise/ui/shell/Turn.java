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
 * Whose turn it is where there is no room for two columns: the one at the left while a circuit is
 * being built, and once somebody asks for it; the readings as soon as there is something to read.
 */
final class Turn {

    private final BooleanProperty asked = new SimpleBooleanProperty();
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

    /** Somebody wants something of the column at the left. */
    void ask() {
        asked.set(true);
    }

    /** Somebody wants the readings. */
    void leave() {
        asked.set(false);
    }
}
