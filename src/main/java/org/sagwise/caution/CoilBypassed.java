package org.sagwise.caution;

import java.util.List;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Conflict;

/**
 * Metal leads round a coil from one end to the other, so that the current does not pass it. Where
 * that shorts the cells as soon as the button is held it is DANGER; else the coil just stays cold.
 * A short that is there with the button let go is left to {@link PackShorted}, a meter that leads
 * round the coil to {@link MeterOnAmps}.
 */
final class CoilBypassed implements HazardRule {

    static final String ID = "coil-bypassed";

    @Override
    public List<Caution> check(Evidence evidence) {
        return evidence.held().circuit().loads().stream()
                .filter(Branch::isShorted)
                .filter(load -> evidence.bench().coils().containsKey(load.part()))
                .filter(load -> isPassedBy(evidence.held(), load))
                .map(load -> caution(evidence, load))
                .toList();
    }

    /** Share of the current that a coil gets at most if it counts as passed by: our choice. */
    static final double MOST_SHARE = 0.1;

    /** Whether the coil gets next to nothing of the current that arrives, or nothing flows. */
    private static boolean isPassedBy(Look held, Branch coil) {
        double coilA = Math.abs(held.currentA(coil.part()));
        return coilA < Look.NO_CURRENT_A
                || held.readings().links().stream()
                        .filter(link -> held.circuit().net(link.from()) == coil.from())
                        .anyMatch(link -> coilA < MOST_SHARE * Math.abs(link.currentA()));
    }

    private static Caution caution(Evidence evidence, Branch coil) {
        return Fight.all(evidence, Conflict.Kind.SHORTED).stream()
                .filter(fight -> fight.look() == evidence.held() && isAt(fight, coil))
                .findFirst()
                .map(fight -> fight.caution(evidence, ID)
                        .parts(coil.part())
                        .parts(fight.members())
                        .names("cell", List.of(fight.busiest()))
                        .variant("short"))
                .orElseGet(() -> new CautionBuilder(evidence, ID, Signal.NOTICE)
                        .when(Caution.When.FIRED)
                        .parts(coil.part())
                        .variant("idle"))
                .build();
    }

    private static boolean isAt(Fight fight, Branch coil) {
        return fight.conflict().members().stream().anyMatch(m -> m.from() == coil.from() || m.to() == coil.from());
    }
}
