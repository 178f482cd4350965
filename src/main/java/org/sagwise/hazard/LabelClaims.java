package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.sagwise.part.CellFormat;
import org.sagwise.part.CellSpec;
import org.sagwise.part.LabelClaim;

/**
 * A label claims more than the cell can do, or more than any cell of its size holds: the mark of a
 * re-wrapped cell. The US Consumer Product Safety Commission (8 January 2021) warns that such cells
 * are taken from packs, wrapped anew and sold as new.
 */
final class LabelClaims implements HazardRule {
    /** Share by which a claimed capacity may exceed the real one: typical spread, from memory. */
    static final double CAPACITY_SPREAD = 0.1;

    /** The most that a cell of each format can hold, as docs/hazards.md says it. */
    static String mostCapacities() {
        Map<Long, List<String>> formats = new TreeMap<>();
        for (CellFormat format : CellFormat.values()) {
            formats.computeIfAbsent(Math.round(MostCapacity.ah(format) * 1000), mah -> new ArrayList<>())
                    .add(format.trade());
        }
        return formats.entrySet().stream()
                .map(entry -> entry.getKey() + " mAh (" + String.join(", ", entry.getValue()) + ")")
                .collect(Collectors.joining(", "));
    }

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.bench().cells().values().stream()
                .filter(cell -> cell.spec().claim().isPresent())
                .flatMap(cell -> caution(context, cell.spec(), cell.id()).stream())
                .toList();
    }

    private static Optional<CautionBuilder> caution(HazardContext context, CellSpec cell, String id) {
        LabelClaim claim = cell.claim().orElseThrow();
        double mostAh = MostCapacity.ah(cell.format());
        CautionBuilder caution = new CautionBuilder(context, Signal.WARNING)
                .parts(id)
                .detail("format", cell.format().trade())
                .detail("mostAh", mostAh)
                .detail("realAh", cell.capacityAh());
        claim.capacityAh().ifPresent(ah -> caution.detail("claimedAh", ah));
        if (claim.limitA().orElse(0) > cell.limitA()) {
            return Optional.of(
                    caution.variant("current").measured(claim.limitA().getAsDouble(), cell.limitA(), "A"));
        }
        double claimedAh = claim.capacityAh().orElse(0);
        if (claimedAh > mostAh) {
            return Optional.of(caution.variant("impossible").measured(claimedAh, mostAh, "Ah"));
        }
        return claimedAh > cell.capacityAh() * (1 + CAPACITY_SPREAD)
                ? Optional.of(caution.variant("capacity").measured(claimedAh, cell.capacityAh(), "Ah"))
                : Optional.empty();
    }
}
