package org.sagwise.web.engine;

import java.util.function.BooleanSupplier;
import org.sagwise.run.Work;

/**
 * Work beside what a reader does: it is over when its outcome is there, or as soon as nobody wants it any more.
 *
 * @param wanted whether its outcome is still wanted
 * @param between done after every piece
 * @param taking takes its outcome
 */
record AsideWork(Work work, BooleanSupplier wanted, Runnable between, Runnable taking) implements Work {

    @Override
    public boolean isOver() {
        return work.isOver() || !wanted.getAsBoolean();
    }

    @Override
    public void more() {
        work.more();
        between.run();
        take();
    }

    @Override
    public void callOff() {
        if (!isOver()) {
            work.callOff();
            take();
        }
    }

    private void take() {
        if (work.isOver() && wanted.getAsBoolean()) {
            taking.run();
        }
    }
}
