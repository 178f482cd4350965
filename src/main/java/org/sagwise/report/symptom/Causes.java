package org.sagwise.report.symptom;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.PartReading;
import org.sagwise.report.symptom.Evidence.Lossy;
import org.sagwise.report.symptom.Evidence.Number;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunResult;
import org.sagwise.scenario.TerminalRef;

/**
 * The causes of symptoms, each with how it shows in the numbers. The thresholds are this program's choice: they say
 * from where on a person would notice.
 */
final class Causes {

    /** Volts that a joint, wire or switch must take before anybody notices, V. */
    private static final double NOTICED_V = 0.1;

    /** Heat at one spot that a finger notices, W. */
    private static final double NOTICED_W = 1;

    /** Share of the rest voltage that sags away, and by which like things differ, before anybody notices. */
    private static final double NOTICED_SHARE = 0.1;

    /** Charge with which nobody calls a cell empty, share. */
    private static final double STILL_CHARGED = 0.2;

    /** A coil that gets less of what the best one gets hardly glows, share. */
    private static final double DIM = 0.7;

    /** What a lithium-ion cell that is not nearly empty has at rest, V: from memory, no source. */
    private static final double LOW_V = 3.5;

    /** Current that drains a cell within weeks, A. */
    private static final double DRAIN_A = 0.005;

    /** Fewer watts than that are called weak, W: some 10 W are usual for the coils of this bench. */
    private static final double WEAK_W = 8;

    private Causes() {}

    private static Cause caution(String id, String... cautions) {
        return new Cause(
                id,
                bench -> bench.caution(cautions)
                        .map(found -> List.of(
                                found.parts().isEmpty()
                                        ? ""
                                        : bench.name(found.parts().get(0)))));
    }

    static final Cause REVERSED_ROW = caution("reversed-row", "reversed-in-series");
    /** A turned cell through which current is pushed. */
    static final Cause DRIVEN_BACKWARDS = new Cause(
            "driven-backwards",
            bench -> bench.caution("reversed-in-series")
                    .filter(found -> found.measured() > DRAIN_A)
                    .map(found -> List.of(new Number(found.measured(), Unit.AMPERE))));

    static final Cause RING =
            caution("ring", "reversed-in-parallel", "unequal-rows-in-parallel", "unequal-charge-in-parallel");
    static final Cause SHORTED = caution("shorted", "pack-shorted", "torn-wrap-touching", "meter-across-cell");
    static final Cause BYPASSED = caution("bypassed", "coil-bypassed");
    static final Cause OVER_LIMIT = caution("over-limit", "cell-over-limit", "pulse-as-continuous");
    static final Cause OPEN = caution("open", "open-circuit");
    static final Cause COLD = caution("cold", "cell-cold");
    static final Cause CLAIMS = caution("claims", "label-claims");
    static final Cause UNEQUAL =
            caution("unequal", "unequal-charge-in-series", "mixed-health", "mixed-capacity", "mixed-resistance");
    static final Cause BOARD_STOPS = caution("board-stops", "board-trouble", "board-asks-too-much");
    static final Cause COIL_OVER = caution("coil-over", "coil-over-limit", "ahead-coil-melts");
    static final Cause STUCK = caution("stuck", "switch-stuck");
    static final Cause CHARGER = caution(
            "charger",
            "charger-too-high",
            "charger-reversed",
            "charge-over-limit",
            "supply-charges-cell",
            "charging-temperature");
    static final Cause OVERCHARGED =
            caution("overcharged", "cell-above-full", "cell-charged-above-full", "ahead-overcharged");
    static final Cause METER = caution("meter", "meter-across-cell", "meter-on-live-circuit");

    /** Of several coils, one stands behind a poor joint. */
    static final Cause COIL_JOINT = new Cause(
            "coil-joint",
            bench -> dim(bench)
                    .flatMap(dim -> bench.joints()
                            .filter(joint -> isOn(joint, dim.id()) && joint.dropV() > NOTICED_V)
                            .findFirst()
                            .map(joint -> List.of(
                                    bench.name(joint.link()),
                                    volts(joint.dropV()),
                                    bench.name(dim.id()),
                                    watts(dim.powerW()),
                                    watts(best(bench).powerW())))));

    /** Of several coils, one has other ohms. */
    static final Cause COIL_OHMS = new Cause(
            "coil-ohms",
            bench -> dim(bench)
                    .filter(dim -> Math.abs(dim.ohm() / best(bench).ohm() - 1) > NOTICED_SHARE)
                    .map(dim -> List.of(
                            bench.name(dim.id()),
                            ohms(dim.ohm()),
                            bench.name(best(bench).id()),
                            ohms(best(bench).ohm()))));

    /** One of several coils gets nothing at all. */
    static final Cause COIL_DEAD = new Cause(
            "coil-dead",
            bench -> dim(bench)
                    .filter(dim -> dim.powerW() < 1e-3 * best(bench).powerW())
                    .map(dim -> List.of(bench.name(dim.id()))));

    static final Cause JOINT = new Cause(
            "joint",
            bench -> bench.joints()
                    .filter(joint -> joint.dropV() > NOTICED_V || joint.heatW() > NOTICED_W)
                    .findFirst()
                    .map(joint -> List.of(
                            bench.name(joint.link()), ohms(joint.ohm()), volts(joint.dropV()), watts(joint.heatW()))));

    static final Cause WIRE = new Cause(
            "wire",
            bench -> bench.wires()
                    .filter(wire -> wire.dropV() > NOTICED_V || wire.heatW() > NOTICED_W)
                    .findFirst()
                    .map(wire -> List.of(bench.name(wire.link()), volts(wire.dropV()), watts(wire.heatW()))));

    static final Cause BUTTON = new Cause(
            "button",
            bench -> bench.fired().parts().stream()
                    .filter(part -> part.kind() == PartKind.SWITCH && part.state() != PartReading.State.OPEN)
                    .filter(part -> Math.abs(part.voltsV()) > NOTICED_V || Math.abs(part.powerW()) > NOTICED_W)
                    .findFirst()
                    .map(part -> List.of(
                            bench.name(part.id()), volts(Math.abs(part.voltsV())), watts(Math.abs(part.powerW())))));

    static final Cause SAG = new Cause(
            "sag",
            bench -> bench.cell(Causes::sagShare)
                    .filter(cell -> sagShare(cell) > NOTICED_SHARE)
                    .map(cell -> List.of(
                            bench.name(cell.id()),
                            volts(cell.restV()),
                            volts(cell.terminalV()),
                            amps(cell.currentA()),
                            ohms(cell.internalOhm()))));

    static final Cause CELL_HEAT = new Cause(
            "cell-heat",
            bench -> bench.cell(CellReading::heatW)
                    .filter(cell -> cell.heatW() > NOTICED_W)
                    .map(cell -> List.of(bench.name(cell.id()), watts(cell.heatW()), amps(Math.abs(cell.currentA())))));

    static final Cause EMPTY = new Cause(
            "empty",
            bench -> bench.cell(cell -> -cell.restV())
                    .filter(cell -> cell.restV() < LOW_V)
                    .map(cell -> List.of(bench.name(cell.id()), volts(cell.restV()))));

    static final Cause WORN = new Cause(
            "worn",
            bench -> bench.bench().cells().values().stream()
                    .filter(cell -> cell.health() < 1 - NOTICED_SHARE)
                    .min(Comparator.comparingDouble(cell -> cell.health()))
                    .map(cell -> List.of(bench.name(cell.id()), new Number(cell.health(), Unit.FRACTION))));

    /** At the end of a run one cell is empty and another is not. */
    static final Cause WEAKEST = new Cause(
            "weakest",
            bench -> bench.run().flatMap(run -> {
                List<CellMoment> cells = byCharge(run);
                CellMoment least = cells.get(0);
                CellMoment most = cells.get(cells.size() - 1);
                return most.charge() - least.charge() > NOTICED_SHARE
                        ? Optional.of(List.of(
                                bench.name(least.id()),
                                share(least.charge()),
                                bench.name(most.id()),
                                share(most.charge())))
                        : Optional.empty();
            }));

    /** Cells give unlike currents. */
    static final Cause SHARE = new Cause("share", bench -> {
        Optional<CellReading> most = bench.cell(CellReading::currentA);
        Optional<CellReading> least = bench.cell(cell -> -cell.currentA());
        return most.filter(cell -> cell.currentA() > DRAIN_A
                        && least.orElseThrow().currentA() < (1 - NOTICED_SHARE) * cell.currentA())
                .map(cell -> List.of(
                        bench.name(cell.id()),
                        amps(cell.currentA()),
                        bench.name(least.orElseThrow().id()),
                        amps(least.orElseThrow().currentA())));
    });

    static final Cause BOARD_EARLY = new Cause("board-early", bench -> early(bench, RunEnd.BOARD));

    static final Cause CUTOFF_EARLY = new Cause("cutoff-early", bench -> early(bench, RunEnd.CUTOFF));

    static final Cause GUARD =
            new Cause("guard", bench -> ended(bench, RunEnd.PROTECTION, "guard-trip", "ahead-guard"));

    static final Cause FUSE = new Cause("fuse", bench -> ended(bench, RunEnd.FUSE, "fuse-will-open", "ahead-fuse"));

    static final Cause PTC = new Cause("ptc", bench -> ended(bench, RunEnd.PTC, "ptc-will-trip"));

    /** Nothing is amiss: it draws what it was made to draw. */
    static final Cause BY_DESIGN = new Cause(
            "by-design",
            bench -> bench.run()
                    .filter(run -> run.end() == RunEnd.CUTOFF || run.end() == RunEnd.BOARD)
                    .filter(run -> run.last().firedS() > 0)
                    .map(run -> List.of(watts(bench.coilW()), seconds(run.last().firedS()))));

    /** Nothing is lost on the way: the coil takes no more. */
    static final Cause MANY_OHMS = new Cause(
            "many-ohms",
            bench -> bench.coils().stream()
                    .filter(coil -> coil.powerW() > 0.01 && bench.coilW() < WEAK_W)
                    .filter(coil -> bench.fired().pack().efficiency() > 1 - 2 * NOTICED_SHARE)
                    .findFirst()
                    .map(coil -> List.of(
                            bench.name(coil.id()),
                            volts(Math.abs(coil.voltsV())),
                            ohms(coil.ohm()),
                            watts(coil.powerW()))));

    /** Current flows with the button let go, and nothing else says why. */
    static final Cause DRAIN = new Cause(
            "drain",
            bench -> bench.rest().cells().stream()
                    .filter(cell -> cell.currentA() > DRAIN_A && bench.has(PartKind.SWITCH))
                    .findFirst()
                    .map(cell -> List.of(bench.name(cell.id()), amps(cell.currentA()))));

    /** The weaker of several coils; empty where they are about alike. */
    private static Optional<CoilReading> dim(Evidence bench) {
        return bench.coils().stream()
                .findFirst()
                .filter(coil -> coil.powerW() < DIM * best(bench).powerW());
    }

    private static CoilReading best(Evidence bench) {
        return bench.coils().get(bench.coils().size() - 1);
    }

    private static boolean isOn(Lossy joint, String part) {
        return Stream.of(joint.link().from(), joint.link().to())
                .map(TerminalRef::part)
                .anyMatch(part::equals);
    }

    private static double sagShare(CellReading cell) {
        return cell.restV() > 0 ? cell.sagV() / cell.restV() : Double.NaN;
    }

    private static List<CellMoment> byCharge(RunResult run) {
        return run.last().cells().stream()
                .sorted(Comparator.comparingDouble(CellMoment::charge))
                .toList();
    }

    /** A run that ends like this though there is charge left in every cell. */
    private static Optional<List<Object>> early(Evidence bench, RunEnd end) {
        return bench.run()
                .filter(run -> run.end() == end)
                .filter(run -> byCharge(run).get(0).charge() > STILL_CHARGED)
                .map(run -> List.of(
                        seconds(run.last().timeS()), share(byCharge(run).get(0).charge())));
    }

    /** A run that ends like this, or a caution that foresees it. */
    private static Optional<List<Object>> ended(Evidence bench, RunEnd end, String... cautions) {
        return bench.caution(cautions)
                .filter(caution -> !caution.parts().isEmpty())
                .map(caution -> caution.parts().get(0))
                .or(() -> bench.run()
                        .filter(run -> run.end() == end)
                        .map(run -> run.events().get(run.events().size() - 1).part()))
                .map(part -> List.of(bench.name(part)));
    }

    private static Number volts(double value) {
        return new Number(value, Unit.VOLT);
    }

    private static Number amps(double value) {
        return new Number(value, Unit.AMPERE);
    }

    private static Number watts(double value) {
        return new Number(value, Unit.WATT);
    }

    private static Number ohms(double value) {
        return new Number(value, Unit.OHM);
    }

    private static Number seconds(double value) {
        return new Number(value, Unit.SECOND);
    }

    private static Number share(double value) {
        return new Number(value, Unit.FRACTION);
    }
}
