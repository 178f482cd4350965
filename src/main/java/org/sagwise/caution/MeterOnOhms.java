package org.sagwise.caution;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.MeterMode;

/**
 * A meter set to ohms sends a small current of its own and expects no other: across a circuit that
 * is alive it shows nonsense and may be damaged (common practice, no source).
 */
final class MeterOnOhms implements HazardRule {

    static final String ID = "meter-on-live-circuit";

    /** Volts from which on a circuit counts as alive, V: our choice. */
    private static final double ALIVE_V = 0.05;

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        for (PartReading meter : evidence.rest().parts()) {
            if (isOhmmeter(evidence, meter)) {
                evidence.looks().stream()
                        .filter(look -> Math.abs(look.part(meter.id()).voltsV()) > ALIVE_V)
                        .findFirst()
                        .map(look -> caution(evidence, look, look.part(meter.id())))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static boolean isOhmmeter(Evidence evidence, PartReading part) {
        return MeterMode.OHMS.isOf(evidence.part(part.id()));
    }

    private static Caution caution(Evidence evidence, Look look, PartReading meter) {
        return new CautionBuilder(evidence, ID, Signal.NOTICE)
                .when(look.when())
                .parts(meter.id())
                .measured(Math.abs(meter.voltsV()), Double.NaN, "V")
                .build();
    }
}
