package org.sagwise.ui.kit;

import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.input.KeyCombination;

/**
 * Something a person can make the window do, by menu, button or keys alike. Its words stand in the
 * bundle under {@code command.<id>} and {@code command.<id>.tip}.
 *
 * @param id its name in code and bundle
 * @param action what it does
 * @param unavailable true while it makes no sense
 * @param keys the keys that do it, as in {@code Shortcut+O}
 */
public record Command(String id, Runnable action, ObservableBooleanValue unavailable, Optional<KeyCombination> keys) {

    /** A command that is always there, without keys. */
    public static Command of(String id, Runnable action) {
        return new Command(id, action, new SimpleBooleanProperty(false), Optional.empty());
    }

    /** The same by these keys. */
    public Command by(String combination) {
        return new Command(id, action, unavailable, Optional.of(KeyCombination.valueOf(combination)));
    }

    /** The same, but not while this holds. */
    public Command unless(ObservableBooleanValue condition) {
        return new Command(id, action, condition, keys);
    }

    public String textKey() {
        return "command." + id;
    }

    public String tipKey() {
        return "command." + id + ".tip";
    }
}
