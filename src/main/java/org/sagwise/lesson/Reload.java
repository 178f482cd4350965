package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.scenario.Scenario;

/** Goes on in a lesson that was changed meanwhile, as near to where one was as can be. */
final class Reload {

    private final Script before;
    private final Script now;

    private Reload(Script before, Script now) {
        this.before = before;
        this.now = now;
    }

    /**
     * @param at place of the step in the lesson as it was
     * @param answers what was done in its steps
     * @param bench the learner's bench; kept if the step's own bench is as before
     */
    static LessonPlayer of(Script before, int at, List<Answers> answers, Scenario bench, Script now) {
        Reload reload = new Reload(before, now);
        int place = reload.place(at);
        List<Answers> kept = new ArrayList<>();
        for (int i = 0; i < now.steps(); i++) {
            kept.add(reload.answers(i, answers));
        }
        LessonPlayer there = LessonPlayer.resume(now.lesson(), now.catalogue(), now.locale(), place, kept);
        boolean same = before.step(at).id().equals(now.step(place).id())
                && before.track().before().get(at).equals(now.track().before().get(place));
        if (same) {
            return there.edited(bench);
        }
        return there.step().isObservation() ? there.reset() : there;
    }

    /** The step of the same name; if it is gone, the nearest before it that is still there. */
    private int place(int at) {
        for (int i = at; i >= 0; i--) {
            int found = indexOf(now, before.step(i).id());
            if (found >= 0) {
                return found;
            }
        }
        return 0;
    }

    /** Answers stay with a step that asks the same as before. */
    private Answers answers(int place, List<Answers> given) {
        int old = indexOf(before, now.step(place).id());
        return old >= 0 && asksTheSame(before.step(old), now.step(place)) ? given.get(old) : Answers.NONE;
    }

    private static boolean asksTheSame(Step before, Step now) {
        return before.kind().equals(now.kind()) && choices(before) == choices(now);
    }

    private static int choices(Step step) {
        return step instanceof Step.Choose choose ? choose.choices().size() : 0;
    }

    private static int indexOf(Script script, String id) {
        return script.lesson().steps().stream().map(Step::id).toList().indexOf(id);
    }
}
