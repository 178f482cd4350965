package org.sagwise.ui.kit;

import javafx.scene.Parent;

/**
 * Gets a node laid out that settles in its own room and so asks nobody around it.
 *
 * <p>JavaFX leaves a node marked for layout when it moved its children while it was laid out itself,
 * and does not tell the nodes above. What is asked for below such a node later is never done, since
 * its mark is taken for one that is on its way.
 */
public final class StuckLayout {

    private StuckLayout() {}

    /** Asks once more for whatever above a node is marked for layout. */
    public static void wake(Parent node) {
        for (Parent above = node.getParent(); above != null; above = above.getParent()) {
            if (above.isNeedsLayout()) {
                above.requestLayout();
                return;
            }
        }
    }
}
