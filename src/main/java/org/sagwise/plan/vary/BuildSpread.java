package org.sagwise.plan.vary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.StatUtils;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.NamedReading;
import org.sagwise.scenario.Scenario;

/**
 * What a reading becomes where parts are not quite as printed: many builds of one bench, their
 * numbers drawn by tolerance with a fixed seed.
 *
 * @param reading what is read
 * @param printed the reading of the bench as it is
 * @param builds how many were tried for the bands
 * @param range within which 90 of 100 builds lie, and the middle one
 * @param mean of all builds
 * @param deviation standard deviation
 * @param ranking numbers of parts, what matters most first
 * @param overLimit share of builds in which a cell gives more than its continuous limit; empty
 *     where no cell has one
 * @param cautions how often each caution stood, of {@code judged} builds, gravest first
 * @param judged in how many builds cautions were looked for
 */
public record BuildSpread(
        NamedReading reading,
        double printed,
        int builds,
        Percentiles range,
        double mean,
        double deviation,
        List<Rank> ranking,
        OptionalDouble overLimit,
        List<Odds> cautions,
        int judged) {

    /** Solutions of the circuit for one answer. */
    public static final int USUAL_SAMPLES = 10_000;

    private static final long SEED = 20_240_607;
    private static final int LEAST_ROWS = 64;

    /** Looking for cautions takes many times as long as solving. */
    private static final int JUDGED = 400;

    private static final int PROGRESS_EVERY = 16;

    public BuildSpread {
        ranking = List.copyOf(ranking);
        cautions = List.copyOf(cautions);
    }

    /**
     * Where 5, 50 and 95 of 100 lie below.
     *
     * @param low 5 of 100 lie below, 50 below the middle, 95 below the high one
     */
    public record Percentiles(double low, double middle, double high) {

        static Percentiles of(double[] values) {
            double[] finite =
                    DoubleStream.of(values).filter(Double::isFinite).sorted().toArray();
            return finite.length == 0
                    ? new Percentiles(Double.NaN, Double.NaN, Double.NaN)
                    : new Percentiles(
                            StatUtils.percentile(finite, 5),
                            StatUtils.percentile(finite, 50),
                            StatUtils.percentile(finite, 95));
        }
    }

    /**
     * How much one number matters.
     *
     * @param printed what it is on the bench, as the file writes it
     * @param first share of the variance that it causes by itself
     * @param total share in which it has a part
     */
    public record Rank(Variable variable, Tolerance tolerance, double printed, double first, double total) {}

    /**
     * How often a caution stood.
     *
     * @param caution as it stood first, of whichever parts
     * @param share of the builds that were judged, 0 to 1
     */
    public record Odds(Caution caution, double share) {}

    /**
     * Tries builds.
     *
     * @param samples solutions of the circuit, about
     * @return empty if it was called off, or if nothing of the bench has a tolerance
     */
    public static Optional<BuildSpread> of(
            Scenario scenario, Catalogue catalogue, NamedReading reading, int samples, Progress progress) {
        Builds builds = new Builds(scenario, catalogue, Optional.empty());
        int inputs = builds.inputs().size();
        if (inputs == 0) {
            return Optional.empty();
        }
        long told = builds.inputs().stream().filter(it -> !it.isOfTime()).count();
        int rows = (int) Math.max(LEAST_ROWS, samples / (told + 2));
        Tally tally = new Tally(reading, rows);
        VarianceShares.Design design = VarianceShares.Design.of(inputs, rows, SEED);
        double[] ofA = new double[rows];
        double[] ofB = new double[rows];
        double[][] ofMixed = new double[inputs][rows];
        for (int row = 0; row < rows; row++) {
            if (row % PROGRESS_EVERY == 0 && !progress.goesOn((double) row / rows)) {
                return Optional.empty();
            }
            Bench a = builds.build(design.a()[row]);
            ofA[row] = tally.counted(a);
            ofB[row] = tally.counted(builds.build(design.b()[row]));
            for (int i = 0; i < inputs; i++) {
                ofMixed[i][row] = builds.inputs().get(i).isOfTime()
                        ? ofA[row]
                        : tally.read(builds.rebuild(a, i, design.b()[row][i]));
            }
        }
        double[] both = DoubleStream.concat(Arrays.stream(ofA), Arrays.stream(ofB))
                .filter(Double::isFinite)
                .toArray();
        return Optional.of(new BuildSpread(
                reading,
                reading.read(Bench.of(scenario, catalogue)).orElse(Double.NaN),
                2 * rows,
                Percentiles.of(both),
                StatUtils.mean(both),
                Math.sqrt(StatUtils.variance(both)),
                ranking(builds, VarianceShares.of(ofA, ofB, ofMixed)),
                tally.overLimit(),
                tally.odds(),
                tally.judged));
    }

    /**
     * The bands over a value: for each number of it where the builds lie.
     *
     * @param each builds for each number
     * @return fewer than asked for if it was called off
     */
    public static List<Percentiles> along(
            Scenario scenario,
            Catalogue catalogue,
            NamedReading reading,
            Variable variable,
            double[] numbers,
            int each,
            Progress progress) {
        List<Percentiles> along = new ArrayList<>();
        for (double number : numbers) {
            if (!progress.goesOn((double) along.size() / numbers.length)) {
                return along;
            }
            Builds builds = new Builds(variable.with(scenario, number), catalogue, Optional.of(variable));
            int inputs = builds.inputs().size();
            double[] values = new double[inputs == 0 ? 1 : each];
            double[][] rows = inputs == 0
                    ? new double[1][0]
                    : VarianceShares.Design.of(inputs, each, SEED).a();
            for (int i = 0; i < values.length; i++) {
                values[i] = reading.read(builds.build(rows[i])).orElse(Double.NaN);
            }
            along.add(Percentiles.of(values));
        }
        return along;
    }

    private static List<Rank> ranking(Builds builds, VarianceShares shares) {
        List<Rank> ranking = new ArrayList<>();
        for (int i = 0; i < builds.inputs().size(); i++) {
            Builds.Input input = builds.inputs().get(i);
            ranking.add(new Rank(
                    input.variable(), input.tolerance(), input.printed(), shares.first()[i], shares.total()[i]));
        }
        ranking.sort(Comparator.comparingDouble((Rank rank) -> -rank.total()));
        return ranking;
    }

    /** Counts what builds do beside the reading. */
    private static final class Tally {
        private final NamedReading reading;
        private final int every;
        private final Map<String, Caution> seen = new LinkedHashMap<>();
        private final Map<String, Integer> often = new LinkedHashMap<>();
        private int tried;
        private int over;
        private int limited;
        private int judged;

        Tally(NamedReading reading, int rows) {
            this.reading = reading;
            this.every = Math.max(1, 2 * rows / JUDGED);
        }

        double read(Bench bench) {
            return reading.read(bench).orElse(Double.NaN);
        }

        double counted(Bench bench) {
            List<CellReading> cells = bench.fired().cells();
            limited += cells.stream().anyMatch(cell -> cell.limitA() > 0) ? 1 : 0;
            over += cells.stream().anyMatch(cell -> cell.loadFraction() > 1) ? 1 : 0;
            if (tried++ % every == 0) {
                judged++;
                Map<String, Caution> here = new LinkedHashMap<>();
                Hazards.check(bench).forEach(caution -> here.putIfAbsent(caution.id(), caution));
                here.forEach((key, caution) -> {
                    seen.putIfAbsent(key, caution);
                    often.merge(key, 1, Integer::sum);
                });
            }
            return read(bench);
        }

        OptionalDouble overLimit() {
            return limited == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) over / tried);
        }

        List<Odds> odds() {
            List<Odds> odds = new ArrayList<>();
            seen.forEach((key, caution) -> odds.add(new Odds(caution, (double) often.get(key) / judged)));
            odds.sort(Comparator.comparing((Odds each) -> each.caution().signal())
                    .thenComparingDouble(each -> -each.share()));
            return odds;
        }
    }
}
