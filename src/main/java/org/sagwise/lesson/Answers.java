package org.sagwise.lesson;

import java.util.Optional;
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
 * @param sureness how sure the learner was of the chosen answer; empty where that is not asked
 */
public record Answers(
        State state,
        OptionalInt choice,
        OptionalDouble number,
        int attempts,
        int hints,
        boolean held,
        Optional<Sureness> sureness) {

    /** Nothing done yet. */
    static final Answers NONE =
            new Answers(State.OPEN, OptionalInt.empty(), OptionalDouble.empty(), 0, 0, false, Optional.empty());

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
        return new Answers(other, choice, number, attempts, hints, held, sureness);
    }

    Answers chosen(int place) {
        return chosen(place, State.DONE);
    }

    /** With an answer, after which something more may be asked. */
    Answers chosen(int place, State next) {
        return new Answers(next, OptionalInt.of(place), number, attempts, hints, held, sureness);
    }

    Answers sure(Optional<Sureness> given) {
        return new Answers(State.DONE, choice, number, attempts, hints, held, given);
    }

    Answers typed(double value, State next) {
        return new Answers(next, choice, OptionalDouble.of(value), attempts + 1, hints, held, sureness);
    }

    Answers hinted() {
        return new Answers(state, choice, number, attempts, hints + 1, held, sureness);
    }

    Answers pressed() {
        // A number typed before anything was there to be read is not held against a learner afterwards.
        OptionalDouble typed = isOpen() ? OptionalDouble.empty() : number;
        return held ? this : new Answers(state, choice, typed, attempts, hints, true, sureness);
    }
}
