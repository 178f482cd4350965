package org.sagwise.ui.bench;

import java.util.Optional;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.edit.History;

/** Brings into view what a person expects to see once a bench is set out anew. */
final class Framing {

    /** A bench with little on it is shown with at least this much room, in bench units. */
    private static final Box LEAST_ROOM = new Box(0, 0, 20 * PartShape.GRID, 10 * PartShape.GRID);

    private final ViewModel view;

    Framing(ViewModel view) {
        this.view = view;
    }

    /**
     * Shows a bench that was set out.
     *
     * @param before what was seen before, if anything was
     * @param history of the document
     */
    void show(Optional<Scenery> before, Scenery now, History history) {
        boolean first = history.entries().size() == 1;
        boolean opened = before.isPresent() && first;
        boolean laidOut = history.present().placement().isEmpty()
                && before.filter(it -> !it.layout().equals(now.layout())).isPresent();
        if (opened || laidOut || isRedrawn(before, now)) {
            view.fit();
        } else if (!first && isMoved(before, now)) {
            view.hold();
        }
        boolean whole = before.isPresent() && view.showsAll();
        view.show(roomy(now.bounds()), now.bounds());
        now.newSince(before).forEach(view::reveal);
        // Undo takes a whole layout back to where nobody looks; a single part follows the hand.
        if (whole && !view.showsAll() && now.movedSince(before) > 1) {
            view.fit();
        }
    }

    /** Whether symbols are seen where things were, or the reverse. */
    static boolean isRedrawn(Optional<Scenery> before, Scenery now) {
        return before.filter(it -> it.layout().drawing() != now.layout().drawing())
                .isPresent();
    }

    private static boolean isMoved(Optional<Scenery> before, Scenery now) {
        return before.filter(it -> !it.layout().parts().equals(now.layout().parts()))
                .isPresent();
    }

    /** A meter with its card must be seen whole. */
    void keepMeter(BenchLayout layout) {
        if (layout.probes().filter(box -> !view.shows(box.card().box())).isPresent()) {
            view.fit();
        }
    }

    /** The room to be shown for a bench whose things take this much. */
    static Box roomy(Box bounds) {
        double wider = Math.max(0, LEAST_ROOM.width() - bounds.width()) / 2;
        double higher = Math.max(0, LEAST_ROOM.height() - bounds.height()) / 2;
        boolean little = wider > 0 && higher > 0;
        return little ? bounds.grown(wider, higher) : bounds;
    }
}
