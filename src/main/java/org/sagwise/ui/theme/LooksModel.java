package org.sagwise.ui.theme;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import org.sagwise.ui.prefs.Preferences;
import org.sagwise.ui.prefs.PreferencesModel;

/** The looks that follow from what a person chose and what the system has. */
public final class LooksModel {

    private final PreferencesModel preferences;
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

    private AppliedLooks compute() {
        Preferences chosen = preferences.get();
        return new AppliedLooks(
                chosen.looks().on(system.theme()),
                chosen.textPercent(),
                chosen.motion().on(system.motion()),
                chosen.drawing());
    }
}
