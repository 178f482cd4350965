package org.sagwise.ui.lesson;

import org.sagwise.interaction.Selection;
import org.sagwise.lesson.Step;
import org.sagwise.scenario.Scenario;

/** Finds on a bench what a step points out. */
final class StepLight {

    private StepLight() {}

    static Selection of(Step step, Scenario bench) {
        return Selection.of(step.head().partsOn(bench), step.head().linksOn(bench));
    }
}
