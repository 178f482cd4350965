package org.sagwise.lesson;

import java.util.Locale;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.LocalText;

/**
 * Turns a bench of a lesson from one language into another: its title, and the names of parts that
 * the lesson gives. What a learner has named is left alone.
 *
 * @param lesson whose names they are
 * @param from the language the bench is in
 * @param to the language it is to be in
 */
public record Naming(Lesson lesson, Locale from, Locale to) {

    public Scenario translate(Scenario bench) {
        Scenario renamed = title(bench);
        for (var name : lesson.names().entrySet()) {
            LocalText both = name.getValue();
            boolean as = renamed.part(name.getKey())
                    .map(part -> part.keys().has("label") ? part.name() : "")
                    .filter(both.in(from)::equals)
                    .isPresent();
            if (as) {
                renamed = renamed.withPart(name.getKey(), part -> part.with("label", both.in(to)));
            }
        }
        return renamed;
    }

    private Scenario title(Scenario bench) {
        return lesson.benches().values().stream()
                .map(Lesson.LessonBench::title)
                .filter(title -> title.in(from).equals(bench.title()))
                .findFirst()
                .map(title -> bench.withTitle(title.in(to)))
                .orElse(bench);
    }
}
