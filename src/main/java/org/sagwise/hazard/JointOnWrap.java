package org.sagwise.hazard;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/**
 * Something is joined to the can of a cell whose wrap is sound: the wrap keeps the two apart, so
 * the joint does nothing, until the wrap tears.
 */
final class JointOnWrap implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<Link> links = context.bench().scenario().links();
        List<Integer> places = IntStream.range(0, links.size())
                .filter(i -> !context.bench().joins(links.get(i)))
                .boxed()
                .toList();
        List<String> cells = places.stream()
                .flatMap(i -> Stream.of(links.get(i).from(), links.get(i).to()))
                .filter(end -> end.isCan())
                .map(TerminalRef::part)
                .filter(id -> !context.torn().contains(id))
                .distinct()
                .toList();
        return cells.isEmpty()
                ? List.of()
                : List.of(
                        new CautionBuilder(context, Signal.NOTICE).parts(cells).links(places));
    }
}
