package org.sagwise.ui.kit;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/**
 * A column that scrolls up and down as wide as it is, and follows the focus: what is reached by
 * keyboard is brought into view.
 */
public class ColumnScroll extends ScrollPane {

    /** Room left beside what is brought into view, in pixels. */
    private static final double MARGIN = 12;

    public ColumnScroll(Subscriptions subscriptions, String... styles) {
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("plain-scroll");
        getStyleClass().addAll(styles);
        subscriptions.watch(
                sceneProperty().flatMap(Scene::focusOwnerProperty), focused -> bringIntoView(this, focused));
    }

    /** Goes to the end, but no further than to what has the focus. */
    public void toEnd() {
        setVvalue(1);
        if (getScene() != null) {
            bringIntoView(this, getScene().getFocusOwner());
        }
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
