package org.sagwise.ui.settings;

import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The preferences as they are now; every change is kept at once. */
public final class PreferencesModel {

    private final SettingsStore store;
    private final ReadOnlyObjectWrapper<Preferences> now;

    public PreferencesModel(SettingsStore store) {
        this.store = store;
        this.now = new ReadOnlyObjectWrapper<>(store.load());
    }

    public Preferences get() {
        return now.get();
    }

    public ReadOnlyObjectProperty<Preferences> property() {
        return now.getReadOnlyProperty();
    }

    public void change(UnaryOperator<Preferences> change) {
        Preferences next = change.apply(now.get());
        if (!next.equals(now.get())) {
            now.set(next);
            store.save(next);
        }
    }
}
