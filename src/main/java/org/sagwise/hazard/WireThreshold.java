package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.part.WireSize;
import org.sagwise.reading.LinkReading;

/**
 * A hazard that begins where a jumper carries more than some limit of its size, with the button let
 * go or else held. All jumpers to which it happens are one caution, with the numbers of the worst.
 *
 * @param threshold the current and its limit
 * @param signal how grave it is
 */
record WireThreshold(Threshold<Wire> threshold, Signal signal) implements HazardRule {

    /**
     * A jumper and what it carries.
     *
     * @param view in which position of the button
     * @param link its reading
     * @param size its cross-section
     */
    record Wire(SwitchView view, LinkReading link, WireSize size) {

        double currentA() {
            return Math.abs(link.currentA());
        }
    }

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<Wire> over = over(context);
        return over.isEmpty() ? List.of() : List.of(caution(context, over));
    }

    /** Jumpers over the limit, the worst first. */
    private List<Wire> over(HazardContext context) {
        List<Wire> found = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (SwitchView view : context.views()) {
            for (LinkReading link : view.readings().links()) {
                context.wire(link.index())
                        .map(size -> new Wire(view, link, size))
                        .filter(threshold::isBeyond)
                        .filter(wire -> seen.add(link.index()))
                        .filter(threshold.also())
                        .ifPresent(found::add);
            }
        }
        found.sort(Worst.first(threshold::size));
        return found;
    }

    private CautionBuilder caution(HazardContext context, List<Wire> over) {
        Wire worst = over.get(0);
        LinkReading link = worst.link();
        return threshold
                .measured(new CautionBuilder(context, signal), worst)
                .when(worst.view().when())
                .parts(link.from().part(), link.to().part())
                .links(over.stream().map(wire -> wire.link().index()).toList())
                .terminal("from", link.from())
                .terminal("to", link.to())
                .detail("widthMm", worst.size().diameterMm())
                .detail("areaMm2", worst.size().areaMm2());
    }
}
