package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/**
 * A lesson as it is played: in one language, with its benches made.
 *
 * @param lesson the lesson
 * @param catalogue where models of parts are looked up
 * @param locale the learner's language
 * @param named its benches by name
 * @param track its benches step by step, as its author solves them
 */
record Script(Lesson lesson, Catalogue catalogue, Locale locale, Map<String, Scenario> named, Track track) {

    static Script of(Lesson lesson, Catalogue catalogue, Locale locale) {
        Map<String, Scenario> named = lesson.scenarios(locale);
        return new Script(lesson, catalogue, locale, named, Track.of(lesson, named, new ScenarioRules(catalogue)));
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

    /**
     * Place of the question that is to be answered before the bench may be looked at: that of this step, or the
     * one to which what is told about a new bench leads. Empty if there is none.
     */
    OptionalInt askedAt(int at) {
        int place = at;
        if (introduces(at)) {
            while (place < steps() - 1 && step(place) instanceof Step.Say) {
                place++;
            }
        }
        return step(place).asks() ? OptionalInt.of(place) : OptionalInt.empty();
    }

    /** Whether nothing but telling came since the bench was laid out. */
    private boolean introduces(int at) {
        int place = at;
        while (step(place) instanceof Step.Say) {
            if (place == 0 || step(place).head().bench().isPresent()) {
                return true;
            }
            place--;
        }
        return false;
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
