package org.sagwise.caution;

import java.util.List;
import java.util.stream.Stream;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Circuit;
import org.sagwise.caution.circuit.Conflict;
import org.sagwise.caution.circuit.Conflicts;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.MeterMode;

/**
 * A meter set to amps is nearly a wire: across a cell it is a short, across a coil it leads round
 * it (OpenStax, University Physics Volume 2, section 10.4).
 */
final class MeterOnAmps implements HazardRule {

    static final String ID = "meter-across-cell";

    @Override
    public List<Caution> check(Evidence evidence) {
        return Fight.all(evidence, Conflict.Kind.SHORTED).stream()
                .filter(fight -> isByMeter(fight))
                .flatMap(fight -> ammeters(evidence, fight.look())
                        .filter(meter -> carriesMost(fight, meter))
                        .limit(1)
                        .map(meter -> caution(evidence, fight, meter)))
                .toList();
    }

    /** Whether a short is gone without the meters, and not just because its ring is opened. */
    private static boolean isByMeter(Fight fight) {
        Circuit without = fight.look().withoutMeters();
        return without.loads().stream().noneMatch(Branch::isShorted)
                && without.packs().stream()
                        .filter(pack -> pack.contains(fight.busiest()))
                        .noneMatch(pack -> Conflicts.in(pack, without).isPresent());
    }

    private static Stream<PartReading> ammeters(Evidence evidence, Look look) {
        return look.readings().parts().stream().filter(part -> MeterMode.AMPS.isOf(evidence.part(part.id())));
    }

    private static boolean carriesMost(Fight fight, PartReading meter) {
        return fight.look().island(meter.id()) == fight.look().island(fight.busiest())
                && !(Math.abs(meter.currentA()) < fight.currentA() / 2);
    }

    private static Caution caution(Evidence evidence, Fight fight, PartReading meter) {
        return fight.caution(evidence, ID)
                .parts(meter.id())
                .parts(fight.members())
                .measured(Math.abs(meter.currentA()), fight.limitA(), "A")
                .build();
    }
}
