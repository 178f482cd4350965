package org.sagwise.lesson;

import java.util.Optional;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;

/** Does in a step what its author means a learner to do, through the ways a learner has. */
final class Pupil {

    private Pupil() {}

    static LessonPlayer solve(LessonPlayer player) {
        Step step = player.step();
        if (step instanceof Step.Choose choose) {
            return player.choose(choose.right()).sure(Optional.of(Sureness.SURE));
        }
        if (step instanceof Step.Estimate estimate) {
            return player.type(player.read(estimate.expected()).orElseThrow());
        }
        if (step instanceof Step.Measure measure) {
            return player.edited(player.bench().with(Press.HELD))
                    .type(player.read(measure.reading()).orElseThrow());
        }
        Scenario bench = player.bench();
        LessonPlayer moved = player;
        for (Edit move : step.solution()) {
            bench = move.apply(bench);
            moved = moved.edited(bench);
        }
        return moved;
    }
}
