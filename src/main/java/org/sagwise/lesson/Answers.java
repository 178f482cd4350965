package org.sagwise.lesson;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a learner has done in one step. Holds no name, no time and nothing else about the person.
 *
 * @param state how far the step is
 * @param choice place of the chosen answer
 * @param number the number typed last, in the unit of the reading
 * @param attempts how many numbers were typed
 * @param hints how many hints have been asked for
 * @param held whether the button was held meanwhile: what has never been there cannot have been read
 */
public record Answers(State state, OptionalInt choice, OptionalDouble number, int attempts, int hints, boolean held) {

    /** Nothing done yet. */
    static final Answers NONE = new Answers(State.OPEN, OptionalInt.empty(), OptionalDouble.empty(), 0, 0, false);

    /** How far a step is. */
    public enum State {
        OPEN,
        DONE,
        /** Solved by the program, because the learner asked for it or went past it. */
        SHOWN
    }

    public boolean isOpen() {
        return state == State.OPEN;
    }

    Answers with(State other) {
        return new Answers(other, choice, number, attempts, hints, held);
    }

    Answers chosen(int place) {
        return new Answers(State.DONE, OptionalInt.of(place), number, attempts, hints, held);
    }

    Answers typed(double value, State next) {
        return new Answers(next, choice, OptionalDouble.of(value), attempts + 1, hints, held);
    }

    Answers hinted() {
        return new Answers(state, choice, number, attempts, hints + 1, held);
    }

    Answers pressed() {
        // A number typed before anything was there to be read is not held against a learner afterwards.
        OptionalDouble typed = isOpen() ? OptionalDouble.empty() : number;
        return held ? this : new Answers(state, choice, typed, attempts, hints, true);
    }
}
