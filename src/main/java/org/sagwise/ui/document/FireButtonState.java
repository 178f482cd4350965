package org.sagwise.ui.document;

import java.util.EnumSet;
import java.util.Set;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.sagwise.scenario.Press;

/**
 * What holds the fire button down. It is down as long as anything holds it, so that letting go of
 * the mouse while the space bar is held changes nothing.
 */
public final class FireButtonState {

    private final Set<Hold> holds = EnumSet.noneOf(Hold.class);
    private final ReadOnlyBooleanWrapper down = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper kept = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper locked = new ReadOnlyBooleanWrapper(false);

    /** What can hold the button. */
    public enum Hold {
        MOUSE,
        KEY,
        /** A latch, for a lesson told with both hands and for people who cannot hold a key. */
        LATCH
    }

    public void press(Hold hold) {
        if (!locked.get()) {
            holds.add(hold);
            update();
        }
    }

    /** Lets go of the button and keeps it up until it is unlocked: a prediction comes first. */
    public void lock() {
        locked.set(true);
        holds.clear();
        update();
    }

    public void unlock() {
        locked.set(false);
    }

    public ReadOnlyBooleanProperty lockedProperty() {
        return locked.getReadOnlyProperty();
    }

    public void release(Hold hold) {
        holds.remove(hold);
        update();
    }

    /** Lets go with everything that only a held key or mouse keeps down. */
    public void letGo() {
        holds.retainAll(Set.of(Hold.LATCH));
        update();
    }

    /** Sets the latch, or lets go of everything. */
    public void start(boolean latched) {
        holds.clear();
        if (latched && !locked.get()) {
            holds.add(Hold.LATCH);
        }
        update();
    }

    /** Turns the latch over. */
    public void toggleLatch() {
        if (!holds.remove(Hold.LATCH) && !locked.get()) {
            holds.add(Hold.LATCH);
        }
        update();
    }

    public boolean isDown() {
        return down.get();
    }

    public Press press() {
        return Press.of(isDown());
    }

    public ReadOnlyBooleanProperty downProperty() {
        return down.getReadOnlyProperty();
    }

    /** Whether the latch holds it. */
    public ReadOnlyBooleanProperty latchedProperty() {
        return kept.getReadOnlyProperty();
    }

    private void update() {
        kept.set(holds.contains(Hold.LATCH));
        down.set(!holds.isEmpty());
    }
}
