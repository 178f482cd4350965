package org.sagwise.assessment.fix;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCoil;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Takes a coil of more ohms: of so many that everything bears the current with room to spare. */
final class MoreOhms implements FixRule {

    /** What too low a coil brings about. */
    static final Set<String> OF_TOO_MUCH_CURRENT = Set.of(
            "cell-over-limit",
            "pulse-as-continuous",
            "cell-near-limit",
            "guard-trip",
            "pack-shorted",
            "fuse-will-open",
            "coil-over-limit");

    private static final double MOST_TIMES = 1000;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Bench bench = assessment.bench();
        List<ResolvedCoil> coils = bench.coils().values().stream()
                .filter(coil -> bench.coils().size() == 1
                        || caution.parts().contains(coil.part().id()))
                .toList();
        return coils.size() == 1 ? withMoreOhms(bench, coils.get(0)) : List.of();
    }

    private static List<Fix> withMoreOhms(Bench bench, ResolvedCoil coil) {
        Scenario scenario = bench.scenario();
        String id = coil.part().id();
        OptionalDouble least = Tuning.nearest(
                coil.ohm20(), coil.ohm20() * MOST_TIMES, ohm -> isBearable(bench, withOhm(scenario, coil, ohm)));
        if (least.isEmpty()) {
            return List.of();
        }
        double ohm = roundedUp(least.getAsDouble());
        Scenario changed = withOhm(scenario, coil, ohm);
        double made = Bench.of(changed, bench.catalogue()).coils().get(id).ohm20();
        return List.of(new Fix(
                "more-ohms",
                List.of(new Fix.Quantity(made, Unit.OHM)),
                Set.of(id),
                before -> withOhm(before, coil, ohm)));
    }

    private static boolean isBearable(Bench bench, Scenario scenario) {
        return Hazards.check(Bench.of(scenario, bench.catalogue())).stream()
                .noneMatch(caution -> OF_TOO_MUCH_CURRENT.contains(caution.id()));
    }

    /** A wound coil gets more wraps of the same wire, in halves. */
    private static Scenario withOhm(Scenario scenario, ResolvedCoil coil, double ohm) {
        return scenario.withPart(
                coil.part().id(),
                part -> part.keys().has("wire") ? wound(part, ohm / coil.ohm20()) : part.with("ohm", ohm));
    }

    private static Part wound(Part part, double times) {
        var wire = part.keys().group("wire").orElseThrow();
        double wraps = Math.ceil(2 * times * wire.number("wraps", 1)) / 2;
        return part.with("wire", wire.with("wraps", wraps));
    }

    /** To hundredths of an ohm, from 10 Ω on to three digits. */
    private static double roundedUp(double ohm) {
        double step = ohm < 10 ? 0.01 : Math.pow(10, Math.floor(Math.log10(ohm)) - 2);
        double steps = Math.ceil(ohm / step - 1e-9);
        return ohm < 10 ? steps / 100 : steps * step;
    }
}
