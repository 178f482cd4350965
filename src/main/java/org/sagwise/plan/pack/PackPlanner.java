package org.sagwise.plan.pack;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.SameWatts;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pack.PackChoice.Course;
import org.sagwise.plan.pack.PackChoice.Verdict;
import org.sagwise.plan.pack.PackPlan.Refusal;
import org.sagwise.plan.pack.PackPlan.Why;
import org.sagwise.plan.pairing.Fitness;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Instant;
import org.sagwise.reading.Readings;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunProgress;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/**
 * Builds every layout from one to four cells in a row and one to four side by side as a bench of its own, from a line of
 * trade words, solves it, and runs it down. Nothing is estimated: what is told is what the bench says.
 */
public final class PackPlanner {

    /** Additions and multiplications that one run may take: some seconds' worth. */
    private static final double MOST_EFFORT = 4e9;

    /** A coil is told by three digits; nobody winds it closer. */
    private static final MathContext COIL_DIGITS = new MathContext(3);

    /** Coil of a regulated pack where nobody says one (Ω): the board sets the watts, whatever it is. */
    private static final double USUAL_COIL_OHM = 0.5;

    private static final double ROUNDING = 1e-9;

    private final PackWish wish;
    private final Catalogue catalogue;
    private final PackBench benches;
    private final List<PackChoice> choices = new ArrayList<>();
    private final List<Refusal> refused = new ArrayList<>();

    /** Hears how far it has come, and may call it off. */
    @FunctionalInterface
    public interface Progress {

        /** Listens to nothing. */
        Progress NONE = (done, all) -> true;

        /**
         * @return whether it is to go on
         */
        boolean goesOn(int done, int all);
    }

    private PackPlanner(PackWish wish, Catalogue catalogue, Locale locale) {
        this.wish = wish;
        this.catalogue = catalogue;
        this.benches = new PackBench(wish, catalogue, locale);
    }

    /**
     * Looks at every layout of every kind of cell.
     *
     * @param locale language of the benches' titles
     */
    public static PackPlan plan(
            PackWish wish, List<PackCell> cells, Catalogue catalogue, Locale locale, Progress progress) {
        return new PackPlanner(wish, catalogue, locale).plan(cells, progress);
    }

    private PackPlan plan(List<PackCell> cells, Progress progress) {
        List<int[]> layouts = layouts(wish.mostCells());
        int all = layouts.size() * cells.size();
        int done = 0;
        Map<OwnCell, Fitness> leftOut = new LinkedHashMap<>();
        cells.forEach(cell -> leftOut.putAll(cell.leftOut()));
        for (PackCell cell : cells) {
            for (int[] layout : layouts) {
                if (!progress.goesOn(done++, all)) {
                    return new PackPlan(wish, choices, refused, leftOut, false);
                }
                look(cell, layout[0], layout[1]);
            }
        }
        return new PackPlan(wish, choices, refused, leftOut, true);
    }

    /** Cells in a row, and rows side by side, with room for no more than so many. */
    static List<int[]> layouts(int mostCells) {
        return IntStream.rangeClosed(1, PackWish.MOST_EACH_WAY)
                .boxed()
                .flatMap(rows -> IntStream.rangeClosed(1, PackWish.MOST_EACH_WAY)
                        .filter(side -> rows * side <= mostCells)
                        .mapToObj(side -> new int[] {rows, side}))
                .toList();
    }

    private void look(PackCell cell, int rows, int side) {
        Optional<List<Keys>> taken = cell.take(rows * side);
        if (taken.isEmpty()) {
            refuse(cell, rows, side, Why.TOO_FEW_CELLS, cell.there());
            return;
        }
        PackBench.Outfit outfit = PackBench.Outfit.first(wish.coilOhm().orElse(USUAL_COIL_OHM));
        // Fuse and wire lie in the way themselves: with them the coil is found anew.
        for (int pass = 0; pass < 2; pass++) {
            Scenario bench = benches.build(taken.get(), rows, side, outfit);
            OptionalDouble ohm = coilOhm(bench);
            if (ohm.isEmpty()) {
                refuse(cell, rows, side, Why.TOO_MANY_WATTS, mostW(bench));
                return;
            }
            PackBench.Outfit with = new PackBench.Outfit(ohm.getAsDouble(), outfit.awg(), outfit.fuseA());
            PackMoment full = PackMoment.of(
                    bench(benches.build(taken.get(), rows, side, with)).fired(), rows);
            if (!(full.coilW() > 0)) {
                refuse(cell, rows, side, Why.GIVES_NOTHING, 0);
                return;
            }
            outfit = pass == 0 ? benches.outfit(with, full, taken.get().get(0), rows) : with;
        }
        choices.add(choice(cell.name(), rows, side, benches.build(taken.get(), rows, side, outfit), outfit));
    }

    private void refuse(PackCell cell, int rows, int side, Why why, double number) {
        refused.add(new Refusal(cell.name(), rows, side, why, number));
    }

    private Bench bench(Scenario scenario) {
        return Bench.of(scenario, catalogue);
    }

    private OptionalDouble coilOhm(Scenario bench) {
        if (wish.regulated() || wish.coilOhm().isPresent()) {
            return OptionalDouble.of(wish.coilOhm().orElse(USUAL_COIL_OHM));
        }
        return SameWatts.coilFor(bench, catalogue, wish.watts().getAsDouble()) instanceof SameWatts.Answer.Found found
                ? OptionalDouble.of(
                        new BigDecimal(found.ohm()).round(COIL_DIGITS).doubleValue())
                : OptionalDouble.empty();
    }

    private double mostW(Scenario bench) {
        return SameWatts.coilFor(bench, catalogue, wish.watts().getAsDouble()) instanceof SameWatts.Answer.TooMuch most
                ? most.mostW()
                : Double.NaN;
    }

    private PackChoice choice(String cell, int rows, int side, Scenario scenario, PackBench.Outfit outfit) {
        Bench bench = bench(scenario);
        PackMoment full = PackMoment.of(bench.fired(), rows);
        PackMoment half = PackMoment.of(bench(at(scenario, 0.5)).fired(), rows);
        List<Caution> cautions = Hazards.check(bench);
        boolean over = Math.max(full.share(), half.share()) > 1 + ROUNDING;
        Optional<Course> course = over ? Optional.empty() : Optional.of(course(bench, rows));
        Verdict verdict = over ? Verdict.OVER_LIMIT : verdict(full, course.orElseThrow(), cautions);
        return new PackChoice(
                cell,
                rows,
                side,
                scenario,
                outfit.coilOhm(),
                outfit.awg(),
                outfit.fuseA(),
                full,
                half,
                course,
                cautions,
                verdict);
    }

    private static Scenario at(Scenario scenario, double charge) {
        Scenario changed = scenario;
        for (Part cell : scenario.partsOf(PartKind.CELL)) {
            changed = changed.withPart(cell.id(), part -> part.without("rest_V").with("charge", charge));
        }
        return changed;
    }

    private Verdict verdict(PackMoment full, Course course, List<Caution> cautions) {
        if (course.peakShare() > 1 + ROUNDING) {
            return Verdict.OVER_LIMIT;
        }
        if (cautions.stream().anyMatch(caution -> caution.signal().isGrave()) || gaveWay(course)) {
            return Verdict.FLAGGED;
        }
        if (Double.isNaN(full.share())) {
            return Verdict.NO_LIMIT;
        }
        boolean tooShort =
                wish.lastsS().isPresent() && course.timeS() < wish.lastsS().getAsDouble();
        return !tooShort ? Verdict.FITS : course.isLowerBound() ? Verdict.UNKNOWN : Verdict.TOO_SHORT;
    }

    /** Whether something else ended the run than cells that are empty. */
    private static boolean gaveWay(Course course) {
        return course.end() != RunEnd.CUTOFF && course.end() != RunEnd.BOARD && course.end() != RunEnd.TOO_LONG;
    }

    private static Course course(Bench bench, int rows) {
        RunResult result = Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, RunProgress.NONE, MOST_EFFORT);
        Readings last = Instant.start(bench, Press.HELD)
                .then(result.last().states(), Press.HELD)
                .readings();
        double share = 0;
        double peakC = Double.NEGATIVE_INFINITY;
        for (CellMoment cell : result.last().cells()) {
            double limitA = bench.cells().get(cell.id()).spec().limitA();
            share = Math.max(share, Math.abs(cell.peakA()) / limitA);
            peakC = Math.max(peakC, cell.peakC());
        }
        List<RunEvent> events = result.events();
        return new Course(
                result.last().timeS(),
                result.last().firedS(),
                result.last().presses(),
                result.end(),
                events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1)),
                PackMoment.of(last, rows),
                share,
                peakC);
    }
}
