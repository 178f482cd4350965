package org.sagwise.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.WireLimits;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.PartKind;

/**
 * A fuse that lets through more than the cells or the wire behind it bear, so that they suffer
 * before it melts. What each would carry when the fuse carries its rating follows from how the
 * current divides when the button is held.
 */
final class FuseTooLarge implements HazardRule {
    static final String ID = "fuse-too-large";

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        for (PartReading fuse : evidence.fired().parts()) {
            double currentA = Math.abs(fuse.currentA());
            if (fuse.kind() == PartKind.FUSE && currentA > Look.NO_CURRENT_A) {
                double scale = evidence.fuse(fuse.id()).ratingA() / currentA;
                cells(evidence, fuse, scale)
                        .or(() -> wires(evidence, fuse, scale))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Caution> cells(Evidence evidence, PartReading fuse, double scale) {
        return evidence.held().cells().values().stream()
                .filter(cell ->
                        evidence.held().island(cell.id()) == evidence.held().island(fuse.id()))
                .filter(cell -> cell.currentA() * scale > cell.limitA() * (1 + ROUNDING))
                .max(Comparator.comparingDouble(CellReading::loadFraction))
                .map(cell -> caution(evidence, fuse, "cells", cell.currentA() * scale, cell.limitA())
                        .parts(cell.id())
                        .build());
    }

    private static Optional<Caution> wires(Evidence evidence, PartReading fuse, double scale) {
        for (LinkReading link : evidence.fired().links()) {
            double currentA = Math.abs(link.currentA()) * scale;
            Optional<Double> limitA = evidence.wire(link.index()).map(WireLimits::steadyCurrentA);
            if (evidence.held().island(link.from().part()) == evidence.held().island(fuse.id())
                    && limitA.filter(limit -> currentA > limit * (1 + ROUNDING)).isPresent()) {
                return Optional.of(caution(evidence, fuse, "wire", currentA, limitA.get())
                        .links(List.of(link.index()))
                        .terminal("from", link.from())
                        .terminal("to", link.to())
                        .build());
            }
        }
        return Optional.empty();
    }

    private static CautionBuilder caution(
            Evidence evidence, PartReading fuse, String variant, double currentA, double limitA) {
        return new CautionBuilder(evidence, ID, Signal.CAUTION)
                .parts(fuse.id())
                .measured(currentA, limitA, "A")
                .variant(variant)
                .detail("ratingA", evidence.fuse(fuse.id()).ratingA());
    }

    /** So that a fuse of exactly the limit passes. */
    private static final double ROUNDING = 1e-9;
}
