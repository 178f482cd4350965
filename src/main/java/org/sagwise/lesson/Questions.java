package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.scenario.Scenario;

/**
 * The questions of a lesson beside what came out, seen from one of its steps.
 *
 * @param at place of that step
 * @param answers what was done in every step
 * @param left the bench with which each step was left
 * @param now the bench as it is
 */
record Questions(Lesson lesson, Locale locale, int at, List<Answers> answers, List<Scenario> left, Situation now) {

    /** Those that this step answers: predictions made before it, or a check just answered. */
    List<Verdict> due() {
        List<Verdict> due = new ArrayList<>();
        for (int i = 0; i < at; i++) {
            if (isPrediction(i) && Track.replyAt(lesson, i) == at) {
                due.add(verdict(i));
            }
        }
        if (isQuestion(at) && !isPrediction(at) && !answers.get(at).isOpen()) {
            due.add(verdict(at));
        }
        return due;
    }

    List<Verdict> all() {
        List<Verdict> all = new ArrayList<>();
        for (int i = 0; i < lesson.steps().size(); i++) {
            if (isQuestion(i)) {
                all.add(verdict(i));
            }
        }
        return all;
    }

    private boolean isQuestion(int place) {
        Step step = lesson.steps().get(place);
        return step instanceof Step.Estimate || step instanceof Step.Choose;
    }

    private boolean isPrediction(int place) {
        return lesson.steps().get(place).predicts();
    }

    private Verdict verdict(int place) {
        int seen = isPrediction(place) ? Track.replyAt(lesson, place) - 1 : place;
        Step step = lesson.steps().get(place);
        return Verdict.of(place, step, answers.get(place), bench(place), bench(seen), locale);
    }

    private Situation bench(int place) {
        return place == at ? now : now.with(left.get(place));
    }
}
