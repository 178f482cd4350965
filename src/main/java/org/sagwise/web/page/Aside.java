package org.sagwise.web.page;

import org.sagwise.run.Work;

/**
 * Long work beside what a reader does. A page has one thread: this gives it back every few milliseconds, so that the
 * page answers and its marks go on. A worker of the browser's would need the whole engine once more.
 */
final class Aside {

    /** So long the page is kept waiting: well within a frame. */
    private static final double SLICE_MS = 8;

    private final Work work;
    private final Runnable ended;

    private Aside(Work work, Runnable ended) {
        this.work = work;
        this.ended = ended;
    }

    static void begin(Work work, Runnable ended) {
        new Aside(work, ended).soon();
    }

    private void soon() {
        Dom.later(time -> slice(), 0);
    }

    private void slice() {
        double endMs = Dom.now() + SLICE_MS;
        while (!work.isOver() && Dom.now() < endMs) {
            work.more();
        }
        if (work.isOver()) {
            ended.run();
        } else {
            soon();
        }
    }
}
