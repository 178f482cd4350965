package org.sagwise.ui.document;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.interaction.Lit;

/**
 * What is picked out at the moment, on bench and staircase alike: what the mouse or the keyboard is
 * on, else what somebody asked to be shown.
 */
public final class Spotlight {

    private final ReadOnlyObjectWrapper<Lit> lit = new ReadOnlyObjectWrapper<>(Lit.NOTHING);
    private Lit pointed = Lit.NOTHING;
    private Lit shown = Lit.NOTHING;

    /** The mouse or the keyboard is on this; {@link Lit#NOTHING} when it has left. */
    public void point(Lit target) {
        pointed = target;
        update();
    }

    /** Picks something out until something else is, or nothing. */
    public void show(Lit target) {
        shown = target;
        update();
    }

    /** Forgets everything, for another document. */
    public void clear() {
        pointed = Lit.NOTHING;
        show(Lit.NOTHING);
    }

    public ReadOnlyObjectProperty<Lit> litProperty() {
        return lit.getReadOnlyProperty();
    }

    public Lit lit() {
        return lit.get();
    }

    private void update() {
        // What is shown stays whole while one of its parts is pointed at.
        lit.set(shown.covers(pointed) ? shown : pointed);
    }
}
