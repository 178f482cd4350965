package org.sagwise.caution;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.reading.ResolvedCoil;

/**
 * A coil turns more watts into heat than it is made for; from {@link Gravity#GLOWING} times its
 * limit on it is a WARNING.
 */
final class CoilOverLimit implements HazardRule {
    static final String ID = "coil-over-limit";

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        for (ResolvedCoil coil : evidence.bench().coils().values()) {
            double limitW = coil.part().keys().number("limit_W", Double.POSITIVE_INFINITY);
            evidence.looks().stream()
                    .filter(look -> look.part(coil.part().id()).powerW() > limitW)
                    .findFirst()
                    .map(look -> caution(evidence, look, coil.part().id(), limitW))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Caution caution(Evidence evidence, Look look, String coil, double limitW) {
        double powerW = look.part(coil).powerW();
        return new CautionBuilder(evidence, ID, Gravity.coil(powerW, limitW))
                .when(look.when())
                .parts(coil)
                .measured(powerW, limitW, "W")
                .detail("coilV", Math.abs(look.part(coil).voltsV()))
                .build();
    }
}
