package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;
import org.sagwise.report.compare.Outcome.Quantity;
import org.sagwise.report.compare.Outcome.Row;
import org.sagwise.report.symptom.Evidence;
import org.sagwise.report.symptom.Symptom;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunResult;
import org.sagwise.run.UsualRun;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Two scenarios side by side.
 *
 * @param first the one
 * @param second the other
 * @param build what differs in build
 * @param outcome what differs in outcome
 */
public record Comparison(Assessment first, Assessment second, List<BuildDifference> build, Outcome outcome) {

    public Comparison {
        build = List.copyOf(build);
    }

    /** Compares what there is to say about two scenarios; runs both down. */
    public static Comparison of(Assessment first, Assessment second) {
        return of(first, second, Comparison::course);
    }

    /** Compares what there is to say at once: how either goes on in time is left untold. */
    public static Comparison atOnce(Assessment first, Assessment second) {
        return of(first, second, untold -> Outcome.Course.UNTOLD);
    }

    private static Comparison of(Assessment first, Assessment second, Function<Assessment, Outcome.Course> course) {
        Scenario here = Plain.of(first.bench());
        Scenario there = Plain.of(second.bench());
        Pairing pairing = Pairer.pair(here, there);
        return new Comparison(
                first,
                second,
                Builds.differences(here, there, pairing),
                new Outcomes(first, second, pairing).outcome(course.apply(first), course.apply(second)));
    }

    /** As {@code run} tells it, whatever ends it. */
    private static Outcome.Course course(Assessment assessment) {
        Optional<RunResult> run = UsualRun.anyway(assessment.bench());
        List<Symptom> symptoms = Symptom.shownBy(Evidence.of(assessment, run));
        boolean endless =
                run.isEmpty() || run.get().end() == RunEnd.TOO_LONG || run.get().end() == RunEnd.UNSOLVABLE;
        double timeS = endless ? Double.NaN : run.get().last().timeS();
        return new Outcome.Course(timeS, run.map(RunResult::end), symptoms);
    }

    /** Whether anything differs, in build or in outcome. */
    public boolean differs() {
        return !build.isEmpty() || outcome.differs();
    }

    /** Puts the outcomes of two scenarios side by side. */
    private record Outcomes(Assessment first, Assessment second, Pairing pairing) {

        Outcome outcome(Outcome.Course was, Outcome.Course is) {
            List<Row> rows = new ArrayList<>();
            Readings rest1 = first.bench().rest();
            Readings rest2 = second.bench().rest();
            Readings held1 = first.bench().fired();
            Readings held2 = second.bench().fired();
            for (String[] pair : pairs(PartKind.CELL)) {
                rows.add(cell(Quantity.REST_CURRENT, pair, rest1, rest2, CellReading::currentA));
                rows.add(cell(Quantity.CURRENT, pair, held1, held2, CellReading::currentA));
                rows.add(cell(Quantity.TERMINAL, pair, held1, held2, CellReading::terminalV));
                rows.add(cell(Quantity.SAG, pair, held1, held2, CellReading::sagV));
            }
            for (String[] pair : pairs(PartKind.COIL)) {
                rows.add(coil(Quantity.COIL_VOLTS, pair, held1, held2, it -> Math.abs(it.voltsV())));
                rows.add(coil(Quantity.COIL_POWER, pair, held1, held2, CoilReading::powerW));
            }
            rows.add(whole(Quantity.GIVEN, held1.pack().givenW(), held2.pack().givenW()));
            rows.add(whole(
                    Quantity.EFFICIENCY, held1.pack().efficiency(), held2.pack().efficiency()));
            rows.add(whole(Quantity.RUN_TIME, was.timeS(), is.timeS()));
            return new Outcome(
                    rows.stream().filter(Outcomes::tells).toList(),
                    without(first.cautions(), second.cautions()),
                    without(second.cautions(), first.cautions()),
                    was,
                    is);
        }

        private static boolean tells(Row row) {
            boolean unknown = Double.isNaN(row.was()) && Double.isNaN(row.is());
            boolean idle =
                    row.quantity() == Quantity.REST_CURRENT && Math.abs(row.was()) < 1e-3 && Math.abs(row.is()) < 1e-3;
            return !unknown && !idle;
        }

        /** Ids of parts of a kind that stand for each other; an empty one where there is none. */
        private List<String[]> pairs(PartKind kind) {
            List<String[]> pairs = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Part part : first.scenario().partsOf(kind)) {
                String mate = pairing.of(part.id()).map(it -> it.part().id()).orElse("");
                seen.add(mate);
                pairs.add(new String[] {part.id(), mate});
            }
            second.scenario().partsOf(kind).stream()
                    .filter(part -> !seen.contains(part.id()))
                    .forEach(part -> pairs.add(new String[] {"", part.id()}));
            return pairs;
        }

        private static Row cell(
                Quantity quantity, String[] pair, Readings one, Readings other, ToDoubleFunction<CellReading> value) {
            return new Row(
                    quantity,
                    pair[0],
                    pair[1],
                    one.cell(pair[0]).map(value::applyAsDouble).orElse(Double.NaN),
                    other.cell(pair[1]).map(value::applyAsDouble).orElse(Double.NaN));
        }

        private static Row coil(
                Quantity quantity, String[] pair, Readings one, Readings other, ToDoubleFunction<CoilReading> value) {
            return new Row(
                    quantity,
                    pair[0],
                    pair[1],
                    one.coil(pair[0]).map(value::applyAsDouble).orElse(Double.NaN),
                    other.coil(pair[1]).map(value::applyAsDouble).orElse(Double.NaN));
        }

        private static Row whole(Quantity quantity, double was, double is) {
            return new Row(quantity, "", "", was, is);
        }

        private static List<Caution> without(List<Caution> these, List<Caution> those) {
            Set<String> known = those.stream().map(Caution::id).collect(Collectors.toSet());
            return these.stream()
                    .filter(caution -> !known.contains(caution.id()))
                    .toList();
        }
    }
}
