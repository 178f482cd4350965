package org.sagwise.lesson;

import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A lesson as it is played: in one language, with its benches made.
 *
 * @param lesson the lesson
 * @param catalogue where models of parts are looked up
 * @param locale the learner's language
 * @param named its benches by name
 * @param track its benches step by step, as its author solves them
 */
record Script(
        Lesson lesson,
        Catalogue catalogue,
        Locale locale,
        Map<String, Scenario> named,
        Track track) {

    static Script of(Lesson lesson, Catalogue catalogue, Locale locale) {
        Map<String, Scenario> named = lesson.scenarios(locale);
        return new Script(lesson, catalogue, locale, named, Track.of(lesson, named));
    }

    Step step(int at) {
        return lesson.steps().get(at);
    }

    int steps() {
        return lesson.steps().size();
    }

    /** What a learner finds who has this bench. */
    Situation situation(Scenario bench) {
        return Situation.of(bench, named, catalogue);
    }

    /** Whether these answers can have been given in this lesson. */
    boolean fits(int reached, List<Answers> given) {
        if (given.size() != steps() || reached < 0 || reached >= steps()) {
            return false;
        }
        for (int i = 0; i < given.size(); i++) {
            if (given.get(i).choice().orElse(-1) >= choices(i)) {
                return false;
            }
        }
        return true;
    }

    private int choices(int at) {
        return step(at) instanceof Step.Choose choose ? choose.choices().size() : 0;
    }
}
