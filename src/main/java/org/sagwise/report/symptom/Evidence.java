package org.sagwise.report.symptom;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.Readings;
import org.sagwise.run.RunResult;
import org.sagwise.run.UsualRun;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.JointName;
import org.sagwise.scenario.PartName;

/** What a bench shows, for those who look for the cause of a symptom. */
public final class Evidence {

    private final Assessment assessment;
    private final Optional<RunResult> run;

    private Evidence(Assessment assessment, Optional<RunResult> run) {
        this.assessment = assessment;
        this.run = run;
    }

    /**
     * Evidence from a bench at its start.
     *
     * @param run how it ends if pressed in the usual way, see {@link UsualRun}; empty where nobody ran it
     */
    public static Evidence of(Assessment assessment, Optional<RunResult> run) {
        return new Evidence(assessment, run);
    }

    /**
     * A joint, or the wire of one, with what is lost in it.
     *
     * @param link the link
     * @param ohm resistance of the part of it that is meant, Ω
     * @param currentA current through it, A
     */
    record Lossy(LinkReading link, double ohm, double currentA) {

        double dropV() {
            return ohm * currentA;
        }

        double heatW() {
            return ohm * currentA * currentA;
        }
    }

    /** What the bench shows at its start. */
    public Assessment assessment() {
        return assessment;
    }

    Bench bench() {
        return assessment.bench();
    }

    Readings fired() {
        return bench().fired();
    }

    Readings rest() {
        return bench().rest();
    }

    /** How it ends if pressed in the usual way; empty for a bench that is too large, or that gives nothing. */
    Optional<RunResult> run() {
        return run;
    }

    /** The first caution of one of these kinds. */
    Optional<Caution> caution(String... ids) {
        Set<String> wanted = Set.of(ids);
        return assessment.cautions().stream()
                .filter(caution -> wanted.contains(caution.id()))
                .findFirst();
    }

    /** Contacts while the button is held, the one that takes most volts first. */
    Stream<Lossy> joints() {
        return lossy(joint -> {
            if (joint instanceof Joint.Touch touch) {
                return touch.mohm() / 1000;
            }
            return joint instanceof Joint.Jumper jumper ? jumper.contactsMohm() / 1000 : 0;
        });
    }

    /** Wires without their ends while the button is held, the one that takes most volts first. */
    Stream<Lossy> wires() {
        return lossy(joint -> joint instanceof Joint.Jumper jumper
                ? jumper.ohmAt(bench().scenario().ambientC()) - jumper.contactsMohm() / 1000
                : 0);
    }

    private Stream<Lossy> lossy(ToDoubleFunction<Joint> ohms) {
        return fired().links().stream()
                .filter(link -> Double.isFinite(link.currentA()))
                .map(link -> new Lossy(
                        link,
                        ohms.applyAsDouble(
                                bench().scenario().links().get(link.index()).joint()),
                        Math.abs(link.currentA())))
                .filter(lossy -> lossy.ohm() > 0)
                .sorted(Comparator.comparingDouble(Lossy::dropV).reversed());
    }

    /** Coils that something is joined to, the one with fewest watts first. */
    List<CoilReading> coils() {
        return fired().coils().stream()
                .filter(coil -> Double.isFinite(coil.powerW()))
                .sorted(Comparator.comparingDouble(CoilReading::powerW))
                .toList();
    }

    /** Watts in all coils. */
    double coilW() {
        return coils().stream().mapToDouble(CoilReading::powerW).sum();
    }

    /** The cell that stands out most by a number. */
    Optional<CellReading> cell(ToDoubleFunction<CellReading> number) {
        return fired().cells().stream()
                .filter(cell -> Double.isFinite(number.applyAsDouble(cell)))
                .max(Comparator.comparingDouble(number));
    }

    boolean has(PartKind kind) {
        return !bench().scenario().partsOf(kind).isEmpty();
    }

    PartName name(String id) {
        return PartName.of(bench().scenario(), id);
    }

    JointName name(LinkReading link) {
        return JointName.of(bench().scenario(), bench().scenario().links().get(link.index()));
    }

    /**
     * A number that a sentence tells.
     *
     * @param value in the unit
     * @param unit what it is measured in
     */
    record Number(double value, Unit unit) {}
}
