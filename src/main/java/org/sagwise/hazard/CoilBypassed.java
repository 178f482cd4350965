package org.sagwise.hazard;

import java.util.List;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Conflict;

/**
 * Metal leads round a coil from one end to the other, so that the current does not pass it. Where
 * that shorts the cells as soon as the button is held it is DANGER; else the coil just stays cold.
 * A short that is there with the button let go is left to {@link PackShorted}, a meter that leads
 * round the coil to {@link MeterOnAmps}.
 */
final class CoilBypassed implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.held().circuit().loads().stream()
                .filter(Branch::isShorted)
                .filter(load -> context.bench().coils().containsKey(load.part()))
                .filter(load -> isPassedBy(context.held(), load))
                .map(load -> caution(context, load))
                .toList();
    }

    /** Share of the current that a coil gets at most if it counts as passed by: our choice. */
    static final double MOST_SHARE = 0.1;

    /** Whether the coil gets next to nothing of the current that arrives, or nothing flows. */
    private static boolean isPassedBy(SwitchView held, Branch coil) {
        double coilA = Math.abs(held.currentA(coil.part()));
        return coilA < SwitchView.NO_CURRENT_A
                || held.readings().links().stream()
                        .filter(link -> held.circuit().net(link.from()) == coil.from())
                        .anyMatch(link -> coilA < MOST_SHARE * Math.abs(link.currentA()));
    }

    private static CautionBuilder caution(HazardContext context, Branch coil) {
        return context.conflicts(Conflict.Kind.SHORTED).stream()
                .filter(current -> current.view() == context.held() && isAt(current, coil))
                .findFirst()
                .map(current -> current.caution(context)
                        .parts(coil.part())
                        .parts(current.members())
                        .names("cell", List.of(current.busiest()))
                        .variant("short"))
                .orElseGet(() -> new CautionBuilder(context, Signal.NOTICE)
                        .when(Caution.When.FIRED)
                        .parts(coil.part())
                        .variant("idle"));
    }

    private static boolean isAt(ConflictCurrent current, Branch coil) {
        return current.conflict().members().stream().anyMatch(m -> m.from() == coil.from() || m.to() == coil.from());
    }
}
