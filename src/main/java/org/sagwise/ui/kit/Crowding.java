package org.sagwise.ui.kit;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;

/** Keeps a row of controls inside the window where text is large or words are long. */
public final class Crowding {

    private Crowding() {}

    /**
     * Leaves out of a row what it has no room for. What is left out must be within reach elsewhere,
     * in a menu for instance.
     *
     * @param row a row whose controls say how narrow they may get; it takes the width it is given
     * @param leastNeededFirst groups of its nodes; the first that are left out come first
     */
    public static void relieve(HBox row, List<List<Node>> leastNeededFirst) {
        row.setMinWidth(0);
        row.applyCss();
        leastNeededFirst.forEach(group -> show(group, true));
        for (List<Node> group : leastNeededFirst) {
            if (!isTooWide(row)) {
                return;
            }
            show(group, false);
        }
    }

    /** Whether a row needs more than the width it has. */
    public static boolean isTooWide(HBox row) {
        return leastWidth(row) > row.getWidth();
    }

    private static double leastWidth(HBox row) {
        List<Node> shown = row.getChildren().stream().filter(Node::isManaged).toList();
        double controls = shown.stream().mapToDouble(node -> node.minWidth(-1)).sum();
        double gaps = row.getSpacing() * Math.max(0, shown.size() - 1);
        return controls + gaps + row.getInsets().getLeft() + row.getInsets().getRight();
    }

    private static void show(List<Node> group, boolean shown) {
        for (Node node : group) {
            node.setVisible(shown);
            node.setManaged(shown);
        }
    }
}
