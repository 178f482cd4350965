package org.sagwise.ui.kit;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * Words that appear where the pointer rests. A tooltip is a window whose styles are looked up like
 * any other's, and a bench has a thousand places for one; so it is made when the pointer first comes.
 */
public final class Tip {

    /** Where words begin a new line, in pixels; a page of text is no wider. */
    private static final double WIDTH = 360;

    private Supplier<String> words;
    private Optional<Tooltip> made = Optional.empty();

    private Tip(Supplier<String> words) {
        this.words = words;
    }

    /** Gives a node words that stay; a screen reader says them too, unless it was given others. */
    public static void put(Node node, String words) {
        Optional<String> before = of(node);
        put(node, () -> words);
        if (node.getAccessibleHelp() == null
                || before.filter(node.getAccessibleHelp()::equals).isPresent()) {
            node.setAccessibleHelp(words);
        }
    }

    /** Gives a node words that follow a value, even while they are read. */
    public static void put(Node node, ObservableValue<String> words) {
        Tip tip = put(node, words::getValue);
        words.addListener((value, old, now) -> tip.retell());
    }

    /**
     * Gives a node words, in place of those that it had.
     *
     * @param words asked for each time they appear; where they are blank, nothing does
     */
    public static Tip put(Node node, Supplier<String> words) {
        if (node.getProperties().get(Tip.class) instanceof Tip tip) {
            tip.words = words;
            tip.retell();
            return tip;
        }
        Tip tip = new Tip(words);
        node.getProperties().put(Tip.class, tip);
        node.addEventHandler(MouseEvent.MOUSE_ENTERED, event -> tip.make(node));
        return tip;
    }

    /** What would appear at a node now. */
    public static Optional<String> of(Node node) {
        return node.getProperties().get(Tip.class) instanceof Tip tip ? Optional.of(tip.words.get()) : Optional.empty();
    }

    /** Says anew what it has to say, if somebody is reading it. */
    public void retell() {
        made.filter(Tooltip::isShowing).ifPresent(this::tell);
    }

    private void make(Node node) {
        if (words.get().isBlank()) {
            made.ifPresent(tooltip -> Tooltip.uninstall(node, tooltip));
            made = Optional.empty();
        } else if (made.isEmpty()) {
            Tooltip tooltip = new Tooltip();
            tooltip.setWrapText(true);
            tooltip.setMaxWidth(WIDTH);
            tooltip.setOnShowing(event -> tell(tooltip));
            Tooltip.install(node, tooltip);
            made = Optional.of(tooltip);
        }
    }

    private void tell(Tooltip tooltip) {
        tooltip.setText(words.get());
    }
}
