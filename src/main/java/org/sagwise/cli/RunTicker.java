package org.sagwise.cli;

import org.sagwise.quantity.Unit;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunProgress;
import org.sagwise.run.RunState;

/**
 * Shows how far a run has come, on one line of a terminal that is overwritten and cleared at the
 * end. Where nobody watches, in a pipe or a file, it says nothing.
 */
final class RunTicker implements RunProgress, AutoCloseable {

    /** Short runs are not worth a flicker, ns. */
    private static final long FIRST_NS = 400_000_000L;

    private static final long EVERY_NS = 200_000_000L;

    private final CallContext call;
    private final boolean watched;
    private long nextNs;
    private int width;

    RunTicker(CallContext call) {
        this(call, System.console() != null);
    }

    RunTicker(CallContext call, boolean watched) {
        this.call = call;
        this.watched = watched;
        nextNs = System.nanoTime() + FIRST_NS;
    }

    @Override
    public boolean goesOn(RunState state) {
        if (watched && System.nanoTime() >= nextNs) {
            nextNs = System.nanoTime() + EVERY_NS;
            show(state);
        }
        return true;
    }

    private void show(RunState state) {
        double least =
                state.cells().stream().mapToDouble(CellMoment::charge).min().orElse(1);
        String line = call.printable(call.texts()
                .say(
                        "run.ticker",
                        call.format().print(state.timeS(), Unit.SECOND),
                        call.format().print(least, Unit.FRACTION)));
        print(line);
        width = line.length();
    }

    private void print(String line) {
        call.err().print('\r' + line + " ".repeat(Math.max(0, width - line.length())));
        call.err().flush();
    }

    @Override
    public void close() {
        if (width > 0) {
            print("");
            call.err().print('\r');
            call.err().flush();
        }
    }
}
