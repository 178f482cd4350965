package org.sagwise.ui.shell;

import java.util.Set;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.input.MouseEvent;
import org.sagwise.ui.settings.PreferencesModel;

/** The bench over the staircase; their shares stay when the window grows, and are remembered. */
final class BenchSplit extends SplitPane {

    private final PreferencesModel preferences;
    private Set<Node> dividers = Set.of();

    BenchSplit(Node bench, Node staircase, PreferencesModel preferences) {
        super(bench, staircase);
        this.preferences = preferences;
        setId("middle");
        setOrientation(Orientation.VERTICAL);
        addEventFilter(MouseEvent.MOUSE_RELEASED, event -> remember());
    }

    /** A split pane left alone keeps pixels, not shares, and forgets what it was told too early. */
    @Override
    protected void layoutChildren() {
        double share = preferences.get().benchShare();
        if (!isDragged() && getDividerPositions()[0] != share) {
            setDividerPositions(share);
        }
        super.layoutChildren();
    }

    private boolean isDragged() {
        if (dividers.isEmpty()) {
            dividers = lookupAll(".split-pane-divider");
        }
        return dividers.stream().anyMatch(Node::isPressed);
    }

    private void remember() {
        double share = getDividerPositions()[0];
        preferences.change(now -> now.withBenchShare(share));
    }
}
