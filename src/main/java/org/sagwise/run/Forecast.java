package org.sagwise.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/**
 * What goes wrong, and how soon, if nobody does anything: the button held, as a jammed one is, or
 * let go. Each stage has a band of time, from running with the corners of the spread of constants;
 * never a promise.
 *
 * @param press whether the button is held
 * @param lookedS how far it was looked ahead, s
 * @param stages what happens, in order of its usual time
 */
public record Forecast(Press press, double lookedS, List<Stage> stages) {

    /** How far is looked ahead, s. */
    public static final double LOOKED_S = 600;

    /** Less than this in every part starts nothing that takes minutes, A. */
    private static final double QUIET_A = 0.05;

    /**
     * Additions and multiplications for one set of constants, of which there are six: a tenth of a second's worth.
     * Twenty times what any demo takes, and more than a pack of 400 cells in rows of twenty.
     */
    private static final double MOST_EFFORT = 1.2e8;

    /**
     * One stage.
     *
     * @param part id of the part; of a link its id, or both its ends
     * @param kind what happens
     * @param usualS time with the usual constants, s; infinite if not within the time looked at
     * @param earliestS earliest time within the spread, s
     * @param latestS latest time within the spread, s; infinite if it may not happen at all
     */
    public record Stage(String part, Kind kind, double usualS, double earliestS, double latestS) {

        /** On what its times rest: the factors of {@link Spread}, however well its limit is known. */
        public Basis basis() {
            return Basis.TEACHING;
        }
    }

    /** What names a stage. */
    private record Key(String part, Kind kind) {}

    /**
     * What came of one set of constants.
     *
     * @param lookedS how far it was followed, s: less where the bench is too large for more
     */
    private record Course(Map<Key, Double> times, double lookedS) {}

    public Forecast {
        stages = List.copyOf(stages);
    }

    /** The forecast for a bench with the button held or let go for ten minutes. */
    public static Forecast of(Bench bench, RunSettings settings, Press press) {
        List<Course> courses = courses(bench, settings, press);
        List<Map<Key, Double>> all = courses.stream().map(Course::times).toList();
        Map<Key, Double> usual = all.get(0);
        Map<Key, Stage> found = new LinkedHashMap<>();
        for (Map<Key, Double> one : all.subList(0, Math.max(1, all.size() - 1))) {
            one.keySet().forEach(key -> found.computeIfAbsent(key, k -> stage(k, usual, all)));
        }
        List<Stage> sorted = new ArrayList<>(found.values());
        sorted.sort((a, b) -> a.usualS() == b.usualS()
                ? Double.compare(a.earliestS(), b.earliestS())
                : Double.compare(a.usualS(), b.usualS()));
        double lookedS = courses.stream().mapToDouble(Course::lookedS).min().orElse(LOOKED_S);
        return new Forecast(press, lookedS, sorted);
    }

    private static List<Course> courses(Bench bench, RunSettings settings, Press press) {
        List<Course> courses = new ArrayList<>(List.of(course(bench, settings, press)));
        if (!isQuiet(bench, settings, press)) {
            for (Spread corner : Spread.corners()) {
                courses.add(course(bench, settings.with(corner), press));
            }
            courses.add(course(bench, settings.with(Spread.STARVED), press));
        }
        return courses;
    }

    /** Whether everything that happens in another forecast happens in this one too. */
    public boolean tellsAllOf(Forecast other) {
        return stages.stream()
                .map(Forecast::key)
                .toList()
                .containsAll(other.stages().stream().map(Forecast::key).toList());
    }

    private static Key key(Stage stage) {
        return new Key(stage.part(), stage.kind());
    }

    private static boolean isQuiet(Bench bench, RunSettings settings, Press press) {
        Stepper stepper = new Stepper(bench, settings);
        return stepper.advance(stepper.start(), press, 0).state().largestCurrentA() < QUIET_A;
    }

    private static Course course(Bench bench, RunSettings settings, Press press) {
        Stepper stepper = new Stepper(bench, settings);
        stepper.giveUpAfter(MOST_EFFORT);
        Advance advance = stepper.advance(stepper.start(), press, LOOKED_S);
        Map<Key, Double> times = new LinkedHashMap<>();
        for (RunEvent event : advance.events()) {
            if (event.kind().isStage()) {
                times.putIfAbsent(new Key(event.part(), event.kind()), event.atS());
            }
        }
        return new Course(times, stepper.isSpent() ? advance.state().timeS() : LOOKED_S);
    }

    private static Stage stage(Key key, Map<Key, Double> usual, List<Map<Key, Double>> all) {
        double earliest = Double.POSITIVE_INFINITY;
        double latest = 0;
        int starved = all.size() - 1;
        for (int i = 0; i < all.size(); i++) {
            double at = all.get(i).getOrDefault(key, Double.POSITIVE_INFINITY);
            earliest = i == starved && i > 0 ? earliest : Math.min(earliest, at);
            latest = Math.max(latest, at);
        }
        double usually = usual.getOrDefault(key, Double.POSITIVE_INFINITY);
        return new Stage(key.part(), key.kind(), usually, earliest, latest);
    }
}
