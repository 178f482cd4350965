package org.sagwise.hazard;

import java.util.List;
import java.util.stream.Stream;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Conflict;
import org.sagwise.circuit.Conflicts;
import org.sagwise.circuit.Netlist;
import org.sagwise.part.MeterMode;
import org.sagwise.reading.PartReading;

/**
 * A meter set to amps is nearly a wire: across a cell it is a short, across a coil it leads round
 * it (OpenStax, University Physics Volume 2, section 10.4).
 */
final class MeterOnAmps implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.conflicts(Conflict.Kind.SHORTED).stream()
                .filter(current -> isByMeter(current))
                .flatMap(current -> ammeters(context, current.view())
                        .filter(meter -> carriesMost(current, meter))
                        .limit(1)
                        .map(meter -> caution(context, current, meter)))
                .toList();
    }

    /** Whether a short is gone without the meters, and not just because its ring is opened. */
    private static boolean isByMeter(ConflictCurrent current) {
        Netlist without = current.view().withoutMeters();
        return without.loads().stream().noneMatch(Branch::isShorted)
                && without.packs().stream()
                        .filter(pack -> pack.contains(current.busiest()))
                        .noneMatch(pack -> Conflicts.in(pack, without).isPresent());
    }

    private static Stream<PartReading> ammeters(HazardContext context, SwitchView view) {
        return view.readings().parts().stream()
                .filter(part -> context.part(part.id()).isTurnedTo(MeterMode.AMPS));
    }

    private static boolean carriesMost(ConflictCurrent current, PartReading meter) {
        return current.view().island(meter.id()) == current.view().island(current.busiest())
                && !(Math.abs(meter.currentA()) < current.currentA() / 2);
    }

    private static CautionBuilder caution(HazardContext context, ConflictCurrent current, PartReading meter) {
        return current.caution(context)
                .parts(meter.id())
                .parts(current.members())
                .measured(Math.abs(meter.currentA()), current.limitA(), "A");
    }
}
