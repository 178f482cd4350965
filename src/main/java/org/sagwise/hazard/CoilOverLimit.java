package org.sagwise.hazard;

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
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        for (ResolvedCoil coil : context.bench().coils().values()) {
            double limitW = coil.part().keys().number("limit_W", Double.POSITIVE_INFINITY);
            context.views().stream()
                    .filter(view -> view.part(coil.part().id()).powerW() > limitW)
                    .findFirst()
                    .map(view -> caution(context, view, coil.part().id(), limitW))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Caution caution(HazardContext context, SwitchView view, String coil, double limitW) {
        double powerW = view.part(coil).powerW();
        return new CautionBuilder(context, ID, Gravity.coil(powerW, limitW))
                .when(view.when())
                .parts(coil)
                .measured(powerW, limitW, "W")
                .detail("coilV", Math.abs(view.part(coil).voltsV()))
                .build();
    }
}
