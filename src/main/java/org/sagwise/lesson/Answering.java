package org.sagwise.lesson;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.lesson.Answers.State;
import org.sagwise.part.PartKind;

/** What becomes of a step when a learner does something in it. */
final class Answering {

    private Answering() {}

    /**
     * After an answer was chosen; what is once chosen stays.
     *
     * @throws IllegalArgumentException if there is no answer at this place
     */
    static Answers choose(Step step, Answers before, int place) {
        if (!(step instanceof Step.Choose choose) || !before.isOpen()) {
            return before;
        }
        if (place < 0 || place >= choose.choices().size()) {
            throw new IllegalArgumentException("no answer at place " + place);
        }
        if (isAskingHowSure(step, before)) {
            return before;
        }
        return before.chosen(place, choose.also().contains(Step.Also.HOW_SURE) ? State.OPEN : State.DONE);
    }

    /** Whether an answer is chosen and only this is open: how sure of it one is. */
    static boolean isAskingHowSure(Step step, Answers given) {
        return step instanceof Step.Choose choose
                && choose.also().contains(Step.Also.HOW_SURE)
                && given.isOpen()
                && given.choice().isPresent();
    }

    /** After the learner has said how sure; empty where nobody is asked, as in a class. */
    static Answers sure(Step step, Answers before, Optional<Sureness> sureness) {
        return isAskingHowSure(step, before) ? before.sure(sureness) : before;
    }

    /**
     * After a number was typed: as a guess, which stays, or as a reading, which is compared with
     * what the bench says.
     */
    static Answers type(Step step, Answers before, Situation bench, double value) {
        if (before.isOpen() && step instanceof Step.Estimate) {
            return before.typed(value, State.DONE);
        }
        if (before.isOpen() && step instanceof Step.Measure measure) {
            OptionalDouble real = bench.read(measure.reading());
            boolean met = !mustHold(measure, before, bench)
                    && real.isPresent()
                    && measure.around(real.getAsDouble()).hold(value);
            return before.typed(value, met ? State.DONE : State.OPEN);
        }
        return before;
    }

    /** After the bench was changed: a step that is solved thereby ticks itself. */
    static Answers edit(Step step, Answers before, Situation bench) {
        Answers given = bench.press().isHeld() ? before.pressed() : before;
        boolean solved = step instanceof Step.Do task
                && before.isOpen()
                && task.until().stream().allMatch(it -> it.holds(bench));
        return solved ? given.with(State.DONE) : given;
    }

    /** Whether what is asked can only be read with the button held, and nobody has held it. */
    static boolean mustHold(Step.Measure measure, Answers given, Situation bench) {
        return measure.reading().when() == When.HELD
                && !given.held()
                && !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
    }
}
