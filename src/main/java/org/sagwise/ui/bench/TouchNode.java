package org.sagwise.ui.bench;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
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

    private final Touched what;
    private final Rectangle2D box;
    private final Supplier<String> words;
    private Optional<Tooltip> tooltip = Optional.empty();
    private String told = "";

    /**
     * @param id for looking it up, as in {@code part-A}
     * @param what what lies there
     * @param box where it is on the bench
     * @param description what it is, in a word or two
     * @param words what it is and what could be measured at it now
     */
    TouchNode(
            String id, Touched what, Rectangle2D box, String description, Supplier<String> words) {
        this.what = what;
        this.box = box;
        this.words = words;
        setId(id);
        getStyleClass().add("touch");
        setManaged(false);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleRoleDescription(description);
        // A tooltip is a window, and there may be a thousand nodes.
        addEventHandler(MouseEvent.MOUSE_ENTERED, event -> addTooltip());
    }

    private void addTooltip() {
        if (tooltip.isEmpty()) {
            Tooltip made = new Tooltip();
            made.setOnShowing(event -> made.setText(words.get()));
            Tooltip.install(this, made);
            tooltip = Optional.of(made);
        }
    }

    /** What lies there. */
    Touched what() {
        return what;
    }

    /** The terminal that it is, if it is one. */
    Optional<TerminalRef> terminal() {
        return what instanceof Touched.End end ? Optional.of(end.terminal()) : Optional.empty();
    }

    boolean belongsTo(TouchNode other) {
        return what.stop().equals(other.what.stop());
    }

    /**
     * Something else can be measured now. That is put into words when somebody asks for it, by
     * pointing or by a screen reader; only who is listening at this moment is told at once.
     */
    void retell() {
        tooltip.filter(Tooltip::isShowing).ifPresent(shown -> shown.setText(words.get()));
        if (isFocused() && !words.get().equals(told)) {
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
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
        if (attribute == AccessibleAttribute.TEXT) {
            told = words.get();
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
