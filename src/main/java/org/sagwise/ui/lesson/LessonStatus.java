package org.sagwise.ui.lesson;

import java.util.Optional;
import org.sagwise.file.LessonProgress.Place;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Lesson;

/**
 * How far a lesson is.
 *
 * @param state whether it is begun or done
 * @param step the step that was reached, from 1
 * @param steps how many steps it has
 */
public record LessonStatus(State state, int step, int steps) {

    /** Whether a lesson is begun or done. */
    public enum State {
        FRESH,
        BEGUN,
        DONE
    }

    static LessonStatus of(Lesson lesson, Optional<Place> kept) {
        int steps = lesson.steps().size();
        Optional<Place> place = kept.filter(it -> it.answers().size() == steps);
        int reached = place.map(Place::reached).orElse(0);
        boolean done = place.filter(it -> it.answers().stream().noneMatch(Answers::isOpen))
                .isPresent();
        boolean begun =
                reached > 0 || place.filter(it -> isBegun(it.answers().get(0))).isPresent();
        State state = done ? State.DONE : begun ? State.BEGUN : State.FRESH;
        return new LessonStatus(state, reached + 1, steps);
    }

    /** A step in which an answer is chosen is begun, also while it is asked how sure one is. */
    private static boolean isBegun(Answers first) {
        return !first.isOpen() || first.choice().isPresent();
    }
}
