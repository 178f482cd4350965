package org.sagwise.ui.lesson;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.interaction.Selection;
import org.sagwise.lesson.Step;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;

/** Finds on a bench what a step points out. */
final class StepLight {

    private StepLight() {}

    static Selection of(Step step, Scenario bench) {
        List<String> look = step.head().look();
        List<Link> links = bench.links();
        return Selection.of(
                look.stream().filter(id -> bench.part(id).isPresent()).toList(),
                IntStream.range(0, links.size())
                        .filter(i -> links.get(i).id().filter(look::contains).isPresent())
                        .boxed()
                        .collect(Collectors.toSet()));
    }
}
