package org.sagwise.ui.kit;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.input.KeyCombination;

/**
 * Something a person can make the window do, by menu, button or keys alike. Its words stand in the
 * bundle under {@code command.<id>} and {@code command.<id>.tip}.
 *
 * @param id its name in code and bundle
 * @param action what it does
 * @param unavailable true while it makes no sense
 * @param keys the keys that do it, as in {@code Shortcut+O}
 * @param mark what its menu item shows beside its words
 * @param named what its menu item says instead of the words of the bundle
 */
public record Command(
        String id,
        Runnable action,
        ObservableBooleanValue unavailable,
        Optional<KeyCombination> keys,
        Optional<Mark> mark,
        Optional<ObservableValue<String>> named) {

    /**
     * What a menu item shows of the value that its command changes.
     *
     * @param shown whether it is marked
     * @param oneOfSeveral whether it is one of several of which one is chosen, or a switch
     */
    public record Mark(ObservableValue<Boolean> shown, boolean oneOfSeveral) {}

    /** A command that is always there, without keys. */
    public static Command of(String id, Runnable action) {
        return new Command(
                id, action, new SimpleBooleanProperty(false), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The same by these keys. */
    public Command by(String combination) {
        return new Command(id, action, unavailable, Optional.of(KeyCombination.valueOf(combination)), mark, named);
    }

    /** The same, but not while this holds. */
    public Command unless(ObservableBooleanValue condition) {
        return new Command(id, action, condition, keys, mark, named);
    }

    /** The same, but neither while this holds. */
    public Command norWhile(ObservableBooleanValue condition) {
        return unless(Bindings.or(unavailable, condition));
    }

    /** The same with a tick while this holds. */
    public Command ticked(ObservableValue<Boolean> value) {
        return marked(new Mark(value, false));
    }

    /** The same as one of several, chosen while this holds. */
    public Command chosen(ObservableValue<Boolean> value) {
        return marked(new Mark(value, true));
    }

    private Command marked(Mark sign) {
        return new Command(id, action, unavailable, keys, Optional.of(sign), named);
    }

    /** The same, whose menu item says this. */
    public Command named(ObservableValue<String> words) {
        return new Command(id, action, unavailable, keys, mark, Optional.of(words));
    }

    public String textKey() {
        return "command." + id;
    }

    public String tipKey() {
        return "command." + id + ".tip";
    }
}
