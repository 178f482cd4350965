package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.MeterMode;
import org.sagwise.reading.PartReading;

/**
 * A meter set to ohms sends a small current of its own and expects no other: across a circuit that
 * is alive it shows nonsense and may be damaged (common practice, no source).
 */
final class MeterOnOhms implements HazardRule {

    static final String ID = "meter-on-live-circuit";

    /** Volts from which on a circuit counts as alive, V: our choice. */
    private static final double ALIVE_V = 0.05;

    @Override
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        for (PartReading meter : context.rest().parts()) {
            if (isOhmmeter(context, meter)) {
                context.views().stream()
                        .filter(view -> Math.abs(view.part(meter.id()).voltsV()) > ALIVE_V)
                        .findFirst()
                        .map(view -> caution(context, view, view.part(meter.id())))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static boolean isOhmmeter(HazardContext context, PartReading part) {
        return context.part(part.id()).isTurnedTo(MeterMode.OHMS);
    }

    private static Caution caution(HazardContext context, SwitchView view, PartReading meter) {
        return new CautionBuilder(context, ID, Signal.NOTICE)
                .when(view.when())
                .parts(meter.id())
                .measured(Math.abs(meter.voltsV()), Double.NaN, "V")
                .build();
    }
}
