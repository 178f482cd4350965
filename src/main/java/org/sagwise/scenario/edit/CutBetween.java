package org.sagwise.scenario.edit;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Parts every joint that lies directly between two terminals. */
public record CutBetween(TerminalRef one, TerminalRef other) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        return cut(before).apply(before);
    }

    private CutLinks cut(Scenario before) {
        return new CutLinks(IntStream.range(0, before.links().size())
                .filter(i -> before.links().get(i).joins(one, other))
                .boxed()
                .collect(Collectors.toSet()));
    }

    @Override
    public List<Finding> missing(Scenario before) {
        List<Finding> missing = Missing.terminals(before, List.of(one, other));
        return missing.isEmpty() && cut(before).links().isEmpty()
                ? List.of(Finding.of("", Problem.NOTHING_TO_CUT, one.toString(), other.toString()))
                : missing;
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("cut.one", EditName.terminalName(before, one), EditName.terminalName(before, other));
    }
}
