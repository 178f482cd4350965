package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.scenario.Finding;

/** What must hold between lessons. */
public final class LessonSet {

    private LessonSet() {}

    /**
     * What is wrong between lessons, by the lesson that names it.
     *
     * @param known names of further lessons that may be needed
     */
    public static Map<String, List<Finding>> check(List<Lesson> lessons, Collection<String> known) {
        Map<String, Lesson> byId = new LinkedHashMap<>();
        lessons.forEach(lesson -> byId.put(lesson.id(), lesson));
        Map<String, List<Finding>> found = new LinkedHashMap<>();
        for (Lesson lesson : lessons) {
            List<Finding> findings = new ArrayList<>();
            for (int i = 0; i < lesson.needs().size(); i++) {
                String needed = lesson.needs().get(i);
                if (!byId.containsKey(needed) && !known.contains(needed)) {
                    findings.add(Finding.of("needs[" + i + "]", LessonProblem.UNKNOWN_LESSON, needed));
                }
            }
            if (reaches(lesson, lesson.id(), byId, new HashSet<>())) {
                findings.add(Finding.of("needs", LessonProblem.NEEDS_EACH_OTHER, lesson.id()));
            }
            found.put(lesson.id(), findings);
        }
        Map<Integer, Double> tooLong = Pacing.tooLong(lessons);
        for (Lesson lesson : lessons) {
            Double minutes = tooLong.get(lesson.evening());
            if (minutes != null) {
                found.get(lesson.id())
                        .add(Finding.of(
                                "evening",
                                LessonProblem.LONG_EVENING,
                                String.valueOf(lesson.evening()),
                                String.valueOf(Math.round(minutes)),
                                "45"));
            }
        }
        return found;
    }

    private static boolean reaches(Lesson from, String target, Map<String, Lesson> byId, Set<String> seen) {
        for (String needed : from.needs()) {
            Lesson next = byId.get(needed);
            boolean arrived = needed.equals(target);
            if (arrived || (next != null && seen.add(needed) && reaches(next, target, byId, seen))) {
                return true;
            }
        }
        return false;
    }

    /** The ideas that the wrong answers of these lessons stand for. */
    public static Set<Idea> ideas(Collection<Lesson> lessons) {
        return lessons.stream()
                .flatMap(lesson -> lesson.steps().stream())
                .filter(Step.Choose.class::isInstance)
                .flatMap(step -> ((Step.Choose) step).choices().stream())
                .flatMap(choice -> choice.idea().stream())
                .collect(Collectors.toSet());
    }
}
