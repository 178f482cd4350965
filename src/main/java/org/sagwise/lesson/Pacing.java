package org.sagwise.lesson;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.sagwise.scenario.Finding;

/**
 * How long a class takes for a lesson, worked out from its steps. The minutes for each kind of step are common
 * practice of evening classes, without a source; what counts is that the same count is made for every lesson.
 */
public final class Pacing {

    /** Between what the steps take and what a lesson says of itself, as a share. */
    private static final double NEAR = 0.25;

    private static final double RUN = 3;

    /** A reason, or how sure one is. */
    private static final double ALSO = 0.5;

    /** Minutes in which what nobody may skip on one evening must fit. */
    private static final double CORE = 45;

    private Pacing() {}

    /** Minutes that a step takes in class, talk included. */
    public static double minutes(Step step) {
        if (step instanceof Step.Choose choose) {
            return choose.role() == Step.Role.PREDICT ? 3 + ALSO * choose.also().size() : 1;
        }
        if (step instanceof Step.Do) {
            return 2.5;
        }
        if (step instanceof Step.Measure measure) {
            return measure.reading().when() == When.RUN ? RUN : 1;
        }
        if (step instanceof Step.Write) {
            return 5;
        }
        return step instanceof Step.Estimate ? 3 : step instanceof Step.Explain ? 1.5 : 1;
    }

    /** Minutes for all steps of a lesson, or only for those that nobody may skip. */
    public static double minutes(Lesson lesson, boolean coreOnly) {
        return (coreOnly ? lesson.core() : lesson.steps())
                .stream().mapToDouble(Pacing::minutes).sum();
    }

    /** Evenings whose core does not fit into a school hour, each with its minutes. */
    public static Map<Integer, Double> tooLong(Collection<Lesson> lessons) {
        Map<Integer, Double> core = new TreeMap<>();
        lessons.forEach(lesson -> core.merge(lesson.evening(), minutes(lesson, true), Double::sum));
        core.values().removeIf(minutes -> minutes <= CORE);
        return core;
    }

    /** What a lesson says of its minutes is about what its steps take. */
    static List<Finding> check(Lesson lesson) {
        double needed = minutes(lesson, false);
        boolean near = Math.abs(needed - lesson.minutes()) <= NEAR * lesson.minutes();
        return near
                ? List.of()
                : List.of(Finding.of(
                        "minutes",
                        LessonProblem.MINUTES,
                        String.valueOf(Math.round(needed)),
                        String.valueOf(lesson.minutes())));
    }
}
