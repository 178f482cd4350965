package org.sagwise.ui.bench;

import java.util.OptionalInt;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;
import org.sagwise.interaction.Selection;
import org.sagwise.ui.document.BenchModel;

/** Picks out the link under the mouse; links are thin and need no node of their own. */
final class LinkPointer {

    /** Finds the link near a point of the view. */
    interface Finder {
        OptionalInt linkAt(double x, double y);
    }

    private final Node surface;
    private final BenchModel bench;
    private final Finder finder;
    private boolean pointing;

    private LinkPointer(Node surface, BenchModel bench, Finder finder) {
        this.surface = surface;
        this.bench = bench;
        this.finder = finder;
    }

    static void on(Node surface, BenchModel bench, Finder finder) {
        LinkPointer pointer = new LinkPointer(surface, bench, finder);
        surface.addEventHandler(MouseEvent.MOUSE_MOVED, pointer::moved);
        surface.addEventHandler(MouseEvent.MOUSE_EXITED, event -> pointer.leave());
    }

    private void moved(MouseEvent event) {
        if (event.getTarget() != surface) {
            pointing = false;
            return;
        }
        OptionalInt link = finder.linkAt(event.getX(), event.getY());
        if (link.isPresent()) {
            pointing = true;
            bench.spotlight().point(Selection.link(link.getAsInt()));
        } else {
            leave();
        }
    }

    private void leave() {
        if (pointing) {
            pointing = false;
            bench.spotlight().point(Selection.NOTHING);
        }
    }
}
