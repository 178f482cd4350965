package org.sagwise.web.page;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.sagwise.run.Work;

/** Small deeds done one after the other while nobody asks for anything, as long as they are wanted. */
final class Rehearsal implements Work {

    private final Deque<Runnable> deeds;
    private final BooleanSupplier wanted;

    Rehearsal(List<Runnable> deeds, BooleanSupplier wanted) {
        this.deeds = new ArrayDeque<>(deeds);
        this.wanted = wanted;
    }

    @Override
    public boolean isOver() {
        return deeds.isEmpty() || !wanted.getAsBoolean();
    }

    @Override
    public void more() {
        deeds.remove().run();
    }

    @Override
    public void callOff() {
        deeds.clear();
    }
}
