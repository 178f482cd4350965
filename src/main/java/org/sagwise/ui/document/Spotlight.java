package org.sagwise.ui.document;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.interaction.Selection;

/**
 * What is picked out at the moment, on bench and staircase alike: what the mouse or the keyboard is
 * on, else what somebody asked to be shown.
 */
public final class Spotlight {

    private final ReadOnlyObjectWrapper<Selection> lit = new ReadOnlyObjectWrapper<>(Selection.NOTHING);
    private Selection pointed = Selection.NOTHING;
    private Selection shown = Selection.NOTHING;

    /** The mouse or the keyboard is on this; {@link Selection#NOTHING} when it has left. */
    public void point(Selection target) {
        pointed = target;
        update();
    }

    /** Picks something out until something else is, or nothing. */
    public void show(Selection target) {
        shown = target;
        update();
    }

    /** Forgets everything, for another document. */
    public void clear() {
        pointed = Selection.NOTHING;
        show(Selection.NOTHING);
    }

    public ReadOnlyObjectProperty<Selection> litProperty() {
        return lit.getReadOnlyProperty();
    }

    public Selection lit() {
        return lit.get();
    }

    private void update() {
        // What is shown stays whole while one of its parts is pointed at.
        lit.set(shown.covers(pointed) ? shown : pointed);
    }
}
