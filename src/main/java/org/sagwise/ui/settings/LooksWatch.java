package org.sagwise.ui.settings;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Asks what the system looks like, again and again: whoever comes back from its settings finds the window as they were
 * set, and dusk comes by itself. Each question starts programs of the system, so it is not asked twice within some
 * seconds, however often the window comes to the front. All methods belong to one thread.
 */
public final class LooksWatch {

    private static final long LEAST_NS = 10_000_000_000L;

    private final Supplier<SystemLooks> system;
    private final Executor behind;
    private final Consumer<SystemLooks> found;
    private final LongSupplier nanoTime;
    private long askedNs;

    /**
     * One that has just asked.
     *
     * @param behind where the system is asked
     * @param found takes the answer, there
     * @param nanoTime real time, ns
     */
    public LooksWatch(
            Supplier<SystemLooks> system, Executor behind, Consumer<SystemLooks> found, LongSupplier nanoTime) {
        this.system = system;
        this.behind = behind;
        this.found = found;
        this.nanoTime = nanoTime;
        askedNs = nanoTime.getAsLong();
    }

    /** Asks, unless it did so a moment ago. */
    public void look() {
        long now = nanoTime.getAsLong();
        if (now - askedNs >= LEAST_NS) {
            askedNs = now;
            behind.execute(() -> found.accept(system.get()));
        }
    }
}
