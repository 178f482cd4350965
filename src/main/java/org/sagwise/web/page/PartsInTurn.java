package org.sagwise.web.page;

import java.util.List;
import java.util.function.Supplier;

/** The parts of a page, said anew one after the other, so that what is touched first answers first. */
final class PartsInTurn {

    /** So long a part of the page may keep the next one waiting for the next frame, ms. */
    private static final double SLICE_MS = 8;

    private final List<PagePart> parts;
    private final Supplier<View> view;
    private final Runnable ended;
    private int laid;
    private boolean layingOn;

    /**
     * @param parts in the order in which they are laid
     * @param ended done each time when all parts have been laid
     */
    PartsInTurn(List<PagePart> parts, Supplier<View> view, Runnable ended) {
        this.parts = parts;
        this.view = view;
        this.ended = ended;
    }

    void layAll() {
        lay(parts.size());
    }

    /** Lays all up to this one at once, the rest as soon as those have been drawn. */
    void layTo(PagePart last) {
        lay(parts.indexOf(last) + 1);
    }

    private void lay(int first) {
        laid = first;
        View now = view.get();
        laidParts().forEach(part -> part.lay(now));
        if (!layingOn) {
            layingOn = true;
            Dom.busy(true);
            Dom.onceDrawn(time -> layOn());
        }
    }

    /** Lays those parts that are not laid yet, some at a time, so that bench and button answer in between. */
    private void layOn() {
        View now = view.get();
        double endMs = Dom.now() + SLICE_MS;
        while (laid < parts.size() && Dom.now() < endMs) {
            parts.get(laid).lay(now);
            laid++;
        }
        if (laid < parts.size()) {
            Dom.later(time -> layOn(), 0);
        } else {
            layingOn = false;
            Dom.busy(false);
            ended.run();
        }
    }

    /** The same bench at another moment. */
    void show() {
        View now = view.get();
        laidParts().forEach(part -> part.show(now));
    }

    private List<PagePart> laidParts() {
        return parts.subList(0, laid);
    }
}
