package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.part.WireLimits;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PartReading;

/**
 * A fuse that lets through more than the cells or the wire behind it bear, so that they suffer
 * before it melts. What each would carry when the fuse carries its rating follows from how the
 * current divides when the button is held.
 */
final class FuseTooLarge implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (PartReading fuse : context.fired().parts()) {
            double currentA = Math.abs(fuse.currentA());
            OptionalDouble passesA = passesA(context, fuse);
            if (passesA.isPresent() && currentA > SwitchView.NO_CURRENT_A) {
                double scale = passesA.getAsDouble() / currentA;
                cells(context, fuse, scale)
                        .or(() -> wires(context, fuse, scale))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** What may pass for ever, A: the rating of a fuse that melts; all that may not trip one that resets. */
    private static OptionalDouble passesA(HazardContext context, PartReading fuse) {
        return switch (fuse.kind()) {
            case FUSE ->
                OptionalDouble.of(context.spec(fuse.id(), FuseSpec.class).ratingA());
            case PTC -> OptionalDouble.of(context.spec(fuse.id(), PtcSpec.class).tripA());
            default -> OptionalDouble.empty();
        };
    }

    private static Optional<CautionBuilder> cells(HazardContext context, PartReading fuse, double scale) {
        return context.held().cells().values().stream()
                .filter(cell ->
                        context.held().island(cell.id()) == context.held().island(fuse.id()))
                .filter(cell -> cell.currentA() * scale > cell.limitA() * (1 + ROUNDING))
                .min(Worst.first(CellView::loadFraction))
                .map(cell -> caution(context, fuse, "cells", cell.currentA() * scale, cell.limitA())
                        .parts(cell.id()));
    }

    private static Optional<CautionBuilder> wires(HazardContext context, PartReading fuse, double scale) {
        for (LinkReading link : context.fired().links()) {
            double currentA = Math.abs(link.currentA()) * scale;
            Optional<Double> limitA = context.wire(link.index()).map(WireLimits::steadyCurrentA);
            if (context.held().island(link.from().part()) == context.held().island(fuse.id())
                    && limitA.filter(limit -> currentA > limit * (1 + ROUNDING)).isPresent()) {
                return Optional.of(caution(context, fuse, "wire", currentA, limitA.get())
                        .links(List.of(link.index()))
                        .terminal("from", link.from())
                        .terminal("to", link.to()));
            }
        }
        return Optional.empty();
    }

    private static CautionBuilder caution(
            HazardContext context, PartReading fuse, String variant, double currentA, double limitA) {
        return new CautionBuilder(context, Signal.CAUTION)
                .parts(fuse.id())
                .measured(currentA, limitA, "A")
                .variant(fuse.kind() == PartKind.PTC ? "ptc-" + variant : variant)
                .detail("ratingA", passesA(context, fuse).orElseThrow());
    }

    /** So that a fuse of exactly the limit passes. */
    private static final double ROUNDING = 1e-9;
}
