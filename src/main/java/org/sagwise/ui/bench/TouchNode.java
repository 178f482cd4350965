package org.sagwise.ui.bench;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.kit.Tip;

/**
 * What a hand, a key, a screen reader and a test find where the painter has drawn something: a
 * transparent node over it.
 */
final class TouchNode extends Region {

    /** Smallest side of a target, in pixels (WCAG 2.2, success criterion 2.5.8). */
    static final double LEAST_SIDE = 24;

    private final Kind kind;
    private Box box;
    private final Tip tip;
    private String told = "";

    /**
     * What it is.
     *
     * @param id for looking it up, as in {@code part-A}
     * @param what what lies there
     * @param description what it is, in a word or two
     * @param words what it is and what could be measured at it now
     */
    record Kind(String id, Touched what, String description, Supplier<String> words) {}

    /**
     * @param box where it is on the bench
     */
    TouchNode(Kind kind, Box box) {
        this.kind = kind;
        this.box = box;
        setId(kind.id());
        getStyleClass().add("touch");
        setManaged(false);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleRoleDescription(kind.description());
        tip = Tip.put(this, kind.words());
    }

    /** What lies there. */
    Touched what() {
        return kind.what();
    }

    /** The terminal that it is, if it is one. */
    Optional<TerminalRef> terminal() {
        return what() instanceof Touched.End end ? Optional.of(end.terminal()) : Optional.empty();
    }

    boolean belongsTo(TouchNode other) {
        return what().stop().equals(other.what().stop());
    }

    /**
     * Something else can be measured now. That is put into words when somebody asks for it, by
     * pointing or by a screen reader; only who is listening at this moment is told at once.
     */
    void retell() {
        tip.retell();
        if (isFocused() && !kind.words().get().equals(told)) {
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        }
    }

    /** Whether it is a node for the same thing. */
    boolean isFor(Kind other) {
        return kind.what().equals(other.what()) && kind.description().equals(other.description());
    }

    /** Lies elsewhere on the bench from now on. */
    void move(Box there) {
        box = there;
    }

    /** Lies down where the view shows its part of the bench. */
    void place(BenchView view) {
        Box seen = view.toWindow(box);
        double width = Math.max(LEAST_SIDE, seen.width());
        double height = Math.max(LEAST_SIDE, seen.height());
        resizeRelocate(seen.middleX() - width / 2, seen.middleY() - height / 2, width, height);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        if (attribute == AccessibleAttribute.TEXT) {
            told = kind.words().get();
            return told;
        }
        return super.queryAccessibleAttribute(attribute, parameters);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            requestFocus();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
