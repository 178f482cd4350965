package org.sagwise.ui.kit;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/** Brings what has the focus into view, so that the keyboard alone can walk through a column. */
public final class FocusScroll {

    /** Room left beside what is brought into view, in pixels. */
    private static final double MARGIN = 12;

    private FocusScroll() {}

    public static void in(ScrollPane pane, Subscriptions subscriptions) {
        subscriptions.watch(
                pane.sceneProperty().flatMap(Scene::focusOwnerProperty), focused -> bringIntoView(pane, focused));
    }

    private static void bringIntoView(ScrollPane pane, Node focused) {
        Node content = pane.getContent();
        if (focused == null || !isInside(focused, content)) {
            return;
        }
        Bounds there = content.sceneToLocal(focused.localToScene(focused.getBoundsInLocal()));
        double seen = pane.getViewportBounds().getHeight();
        double hidden = content.getBoundsInLocal().getHeight() - seen;
        if (hidden <= 0) {
            return;
        }
        double top = pane.getVvalue() * hidden;
        if (there.getMinY() < top) {
            pane.setVvalue((there.getMinY() - MARGIN) / hidden);
        } else if (there.getMaxY() > top + seen) {
            pane.setVvalue((there.getMaxY() + MARGIN - seen) / hidden);
        }
    }

    private static boolean isInside(Node node, Node ancestor) {
        return node == ancestor || node.getParent() != null && isInside(node.getParent(), ancestor);
    }
}
