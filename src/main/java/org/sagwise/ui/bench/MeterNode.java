package org.sagwise.ui.bench;

import java.util.function.Supplier;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.layout.Region;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.ui.kit.Tip;

/**
 * A probe or a letter of the dial: what a hand, a key and a screen reader find over the picture.
 */
final class MeterNode extends Region {

    private final Box box;
    private final Supplier<String> words;
    private final Runnable action;
    private final Tip tip;

    /**
     * @param box where it is on the bench
     * @param description what it is, in a word or two
     * @param words what it is and does now
     * @param action what Enter and a screen reader do with it
     */
    MeterNode(String id, Box box, String description, Supplier<String> words, Runnable action) {
        this.box = box;
        this.words = words;
        this.action = action;
        setId(id);
        getStyleClass().add("touch");
        setManaged(false);
        setFocusTraversable(true);
        setCursor(Cursor.HAND);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleRoleDescription(description);
        tip = Tip.put(this, words);
        retell();
    }

    /** Takes over what it is and does now. */
    void retell() {
        setAccessibleText(words.get());
        tip.retell();
    }

    /** Lies down where the view shows its part of the bench. */
    void place(BenchView view) {
        Box seen = view.toWindow(box);
        double width = Math.max(TouchNode.LEAST_SIDE, seen.width());
        double height = Math.max(TouchNode.LEAST_SIDE, seen.height());
        resizeRelocate(seen.middleX() - width / 2, seen.middleY() - height / 2, width, height);
    }

    void act() {
        action.run();
    }

    @Override
    public void executeAccessibleAction(AccessibleAction accessible, Object... parameters) {
        if (accessible == AccessibleAction.FIRE) {
            act();
        } else {
            super.executeAccessibleAction(accessible, parameters);
        }
    }
}
