package org.sagwise.ui.settings;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.picture.look.TextStyle;

/** The looks that follow from what a person chose and what the system has. */
public final class LooksModel {

    /** Least size of text on a projector, in percent. */
    private static final int USUAL_TEXT = 150;

    /** The same in a low window, which a projector enlarges more. */
    private static final int LOW_TEXT = 125;

    /** Height below which a window is low, in pixels. */
    private static final double LOW_WINDOW = 800;

    /**
     * Share of the height of the picture that a figure on the bench has at least when a class looks
     * on, so that it is read from the back of the room: common practice, no source.
     */
    private static final double LEAST_FIGURE_SHARE = 1 / 45.0;

    /** Height of the digits of volts, amps and watts at their usual size, in pixels: 0.66 of the letters' body. */
    private static final double USUAL_FIGURE = TextStyle.FIGURE.size() * 0.66;

    private final PreferencesModel preferences;
    private final ReadOnlyBooleanWrapper projector = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<AppliedLooks> applied;
    private final ReadOnlyObjectWrapper<AppliedLooks> near;
    private SystemLooks system = SystemLooks.UNKNOWN;
    private boolean low;
    private double height = LOW_WINDOW;

    public LooksModel(PreferencesModel preferences) {
        this.preferences = preferences;
        this.applied = new ReadOnlyObjectWrapper<>(compute());
        this.near = new ReadOnlyObjectWrapper<>(computeNear());
        preferences.property().subscribe((before, now) -> update());
    }

    /** Takes over what the system was found to look like. */
    public void follow(SystemLooks found) {
        if (!found.equals(system)) {
            system = found;
            update();
        }
    }

    public AppliedLooks get() {
        return applied.get();
    }

    public ReadOnlyObjectProperty<AppliedLooks> property() {
        return applied.getReadOnlyProperty();
    }

    /** The looks of a window that is only seen from near by, also while a class looks on. */
    public ReadOnlyObjectProperty<AppliedLooks> nearProperty() {
        return near.getReadOnlyProperty();
    }

    /**
     * Takes over how high the window is. A beamer throws a small picture as large as a big one, and
     * with it the letters: they need fewer pixels there, and question and bench need the room.
     *
     * @param heightPx in pixels, 0 or more
     */
    public void fit(double heightPx) {
        if (heightPx <= 0) {
            return;
        }
        low = heightPx < LOW_WINDOW;
        height = heightPx;
        update();
    }

    /** Whether a class looks on: larger type and fewer panels, until the window is closed. */
    public ReadOnlyBooleanProperty projectorProperty() {
        return projector.getReadOnlyProperty();
    }

    public void toggleProjector() {
        projector.set(!projector.get());
        update();
    }

    private void update() {
        near.set(computeNear());
        applied.set(compute());
    }

    private AppliedLooks compute() {
        return projector.get()
                ? computeNear().projected(low ? LOW_TEXT : USUAL_TEXT, height * LEAST_FIGURE_SHARE / USUAL_FIGURE)
                : computeNear();
    }

    private AppliedLooks computeNear() {
        Preferences chosen = preferences.get();
        return new AppliedLooks(
                chosen.looks().on(system.theme()),
                chosen.textPercent(),
                chosen.motion().on(system.motion()),
                chosen.drawing(),
                1,
                chosen.textPercent() / 100.0);
    }
}
