package org.sagwise.ui.theme;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import org.sagwise.ui.prefs.Preferences;
import org.sagwise.ui.prefs.PreferencesModel;

/** The looks that follow from what a person chose and what the system has. */
public final class LooksModel {

    /** Least size of text on a projector, in percent. */
    private static final int PROJECTOR_TEXT = 150;

    /** By how much thin lines are thickened on a projector: the last row must see them. */
    private static final double PROJECTOR_LINES = 2;

    private final PreferencesModel preferences;
    private final ReadOnlyBooleanWrapper projector = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<AppliedLooks> applied;
    private SystemLooks system = SystemLooks.UNKNOWN;

    public LooksModel(PreferencesModel preferences) {
        this.preferences = preferences;
        this.applied = new ReadOnlyObjectWrapper<>(compute());
        preferences.property().subscribe((before, now) -> applied.set(compute()));
    }

    /** Takes over what the system was found to look like. */
    public void follow(SystemLooks found) {
        system = found;
        applied.set(compute());
    }

    public AppliedLooks get() {
        return applied.get();
    }

    public ReadOnlyObjectProperty<AppliedLooks> property() {
        return applied.getReadOnlyProperty();
    }

    /** Whether a class looks on: larger type and fewer panels, until the window is closed. */
    public ReadOnlyBooleanProperty projectorProperty() {
        return projector.getReadOnlyProperty();
    }

    public void toggleProjector() {
        projector.set(!projector.get());
        applied.set(compute());
    }

    private AppliedLooks compute() {
        Preferences chosen = preferences.get();
        return new AppliedLooks(
                chosen.looks().on(system.theme()),
                projector.get()
                        ? Math.max(chosen.textPercent(), PROJECTOR_TEXT)
                        : chosen.textPercent(),
                chosen.motion().on(system.motion()),
                chosen.drawing(),
                projector.get() ? PROJECTOR_LINES : 1);
    }
}
