package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCoil;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.Together;

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

    /** What only time shows takes too long to search: so many times the ohms are tried. */
    private static final double AHEAD_TIMES = 3;

    /**
     * Several coils keep their proportions: all get as many times their ohms. Behind a regulated board more ohms do not
     * change what the cells give, as long as its volts suffice; there the watts are the cure.
     */
    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Bench bench = assessment.bench();
        boolean regulated = !bench.scenario().partsOf(PartKind.BOARD).isEmpty();
        if (regulated && !caution.id().equals("board-trouble")) {
            return List.of();
        }
        List<ResolvedCoil> named = bench.coils().values().stream()
                .filter(coil -> caution.parts().contains(coil.part().id()))
                .toList();
        List<ResolvedCoil> coils = named.isEmpty() ? List.copyOf(bench.coils().values()) : named;
        return coils.isEmpty() ? List.of() : withMoreOhms(bench, coils, caution);
    }

    private static List<Fix> withMoreOhms(Bench bench, List<ResolvedCoil> coils, Caution caution) {
        Scenario scenario = bench.scenario();
        OptionalDouble least = LookAhead.atS(caution).isPresent()
                ? OptionalDouble.of(AHEAD_TIMES)
                : Tuning.nearest(
                        1,
                        MOST_TIMES,
                        times -> isBearable(bench, withOhms(coils, times, false).apply(scenario), caution.id()));
        if (least.isEmpty()) {
            return List.of();
        }
        double times = least.getAsDouble();
        Edit edit = withOhms(coils, times, true);
        Map<String, ResolvedCoil> made =
                Bench.of(edit.apply(scenario), bench.catalogue()).coils();
        List<Double> ohms =
                coils.stream().map(coil -> made.get(coil.part().id()).ohm20()).toList();
        Set<String> ids =
                Set.copyOf(coils.stream().map(coil -> coil.part().id()).toList());
        Fix.Quantity lowest =
                new Fix.Quantity(ohms.stream().min(Double::compare).orElseThrow(), Unit.OHM);
        if (coils.size() == 1) {
            return List.of(new Fix(FixKind.MORE_OHMS, List.of(lowest), ids, edit));
        }
        List<Part> parts = coils.stream().map(ResolvedCoil::part).toList();
        boolean alike = ohms.stream().distinct().count() == 1;
        return List.of(
                alike
                        ? new Fix(FixKind.MORE_OHMS_EACH, List.of(parts, lowest), ids, edit)
                        : new Fix(FixKind.MORE_OHMS_SINGLY, List.of(new Fix.Each(parts, ohms, Unit.OHM)), ids, edit));
    }

    private static boolean isBearable(Bench bench, Scenario scenario, String cured) {
        return Hazards.check(Bench.of(scenario, bench.catalogue())).stream()
                .map(Caution::id)
                .noneMatch(id -> OF_TOO_MUCH_CURRENT.contains(id) || id.equals(cured));
    }

    /**
     * Coils of so many times their ohms. A wound coil gets more wraps of the same wire, in halves.
     *
     * @param rounded whether others get ohms that can be bought
     */
    private static Edit withOhms(List<ResolvedCoil> coils, double times, boolean rounded) {
        return new Together(
                coils.stream().map(coil -> withOhms(coil, times, rounded)).toList());
    }

    private static Edit withOhms(ResolvedCoil coil, double times, boolean rounded) {
        Part part = coil.part();
        Optional<Keys> wire = part.keys().group("wire");
        if (wire.isPresent()) {
            double wraps = Math.ceil(2 * times * wire.get().number("wraps", 1)) / 2;
            return SetPartKeys.set(part.id(), "wire", wire.get().with("wraps", wraps));
        }
        double ohm = coil.ohm20() * times;
        return SetPartKeys.set(part.id(), "ohm", rounded ? roundedUp(ohm) : ohm);
    }

    /** To hundredths of an ohm, one of them at least; from 10 Ω on to three digits. */
    private static double roundedUp(double ohm) {
        double step = ohm < 10 ? 0.01 : Math.pow(10, Math.floor(Math.log10(ohm)) - 2);
        double steps = Math.max(1, Math.ceil(ohm / step - 1e-9));
        return ohm < 10 ? steps / 100 : steps * step;
    }
}
