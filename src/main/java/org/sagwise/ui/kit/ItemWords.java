package org.sagwise.ui.kit;

import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/**
 * Says the items of a list in words. They are chosen and never typed, so none is read back.
 *
 * @param <T> what is chosen
 */
public final class ItemWords<T> extends StringConverter<T> {

    private final Function<T, String> words;

    public ItemWords(Function<T, String> words) {
        this.words = words;
    }

    @Override
    public String toString(T item) {
        return item == null ? "" : words.apply(item);
    }

    @Override
    public T fromString(String text) {
        return null;
    }

    /** A list under its name. */
    public static VBox labelled(String name, ComboBox<?> box) {
        Label label = new Label(name);
        label.setWrapText(true);
        label.setLabelFor(box);
        VBox both = new VBox(label, box);
        both.getStyleClass().add("quantity-field");
        return both;
    }
}
