package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.sagwise.part.WireSize;
import org.sagwise.reading.LinkReading;

/** Jumpers that carry more than some limit of their size. */
final class JumperLoads {

    private JumperLoads() {}

    /**
     * A jumper and what it carries against what it may.
     *
     * @param view in which position of the button
     * @param link its reading
     * @param size its cross-section
     * @param limitA what it may carry, A
     */
    record Load(SwitchView view, LinkReading link, WireSize size, double limitA) {

        double currentA() {
            return Math.abs(link.currentA());
        }

        double share() {
            return currentA() / limitA;
        }

        /** A caution with the numbers of this jumper, the worst of several over their limit. */
        Caution caution(HazardContext context, String id, Signal signal, List<Load> all) {
            return new CautionBuilder(context, id, signal)
                    .when(view.when())
                    .parts(link.from().part(), link.to().part())
                    .links(all.stream().map(load -> load.link().index()).toList())
                    .measured(currentA(), limitA, "A")
                    .terminal("from", link.from())
                    .terminal("to", link.to())
                    .detail("widthMm", size.diameterMm())
                    .detail("areaMm2", size.areaMm2())
                    .build();
        }
    }

    /**
     * Jumpers over a limit, the worst first: with the button let go, else held.
     *
     * @param limitA what a wire of a size may carry, A
     */
    static List<Load> over(HazardContext context, ToDoubleFunction<WireSize> limitA) {
        List<Load> found = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (SwitchView view : context.views()) {
            for (LinkReading link : view.readings().links()) {
                context.wire(link.index())
                        .map(size -> new Load(view, link, size, limitA.applyAsDouble(size)))
                        .filter(load -> load.share() > 1)
                        .filter(load -> seen.add(link.index()))
                        .ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingDouble(Load::share).reversed());
        return found;
    }
}
