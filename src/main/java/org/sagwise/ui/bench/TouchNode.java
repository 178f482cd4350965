package org.sagwise.ui.bench;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.TerminalRef;

import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a hand, a key, a screen reader and a test find where the painter has drawn something: a
 * transparent node over it.
 */
final class TouchNode extends Region {

    /** Smallest side of a target, in pixels (WCAG 2.2, success criterion 2.5.8). */
    static final double LEAST_SIDE = 24;

    private final String part;
    private final Optional<TerminalRef> terminal;
    private final Rectangle2D box;
    private final Supplier<String> words;
    private final Tooltip tooltip = new Tooltip();

    /**
     * @param id for looking it up, as in {@code part-A}
     * @param part id of the part that it is or belongs to
     * @param terminal the terminal that it is, if it is one
     * @param box where it is on the bench
     * @param description what it is, in a word or two
     * @param words what it is and what could be measured at it now
     */
    TouchNode(
            String id,
            String part,
            Optional<TerminalRef> terminal,
            Rectangle2D box,
            String description,
            Supplier<String> words) {
        this.part = part;
        this.terminal = terminal;
        this.box = box;
        this.words = words;
        setId(id);
        getStyleClass().add("touch");
        setManaged(false);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleRoleDescription(description);
        Tooltip.install(this, tooltip);
        retell();
    }

    String part() {
        return part;
    }

    /** The terminal that it is, if it is one. */
    Optional<TerminalRef> terminal() {
        return terminal;
    }

    boolean belongsTo(TouchNode other) {
        return part.equals(other.part);
    }

    /** Takes over what can be measured now. */
    void retell() {
        String now = words.get();
        if (!now.equals(getAccessibleText())) {
            setAccessibleText(now);
            tooltip.setText(now);
        }
    }

    /** Lies down where the view shows its part of the bench. */
    void place(BenchView view) {
        Rectangle2D seen = view.toWindow(box);
        double width = Math.max(LEAST_SIDE, seen.getWidth());
        double height = Math.max(LEAST_SIDE, seen.getHeight());
        resizeRelocate(
                seen.getCenterX() - width / 2, seen.getCenterY() - height / 2, width, height);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.TEXT
                ? getAccessibleText()
                : super.queryAccessibleAttribute(attribute, parameters);
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
