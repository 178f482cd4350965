package org.sagwise.scenario.edit;

import java.util.Collection;
import java.util.List;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.TerminalRef;

/** Names what edits speak of and a bench does not have. */
final class Missing {

    private Missing() {}

    static List<Finding> parts(Scenario bench, Collection<String> ids) {
        return ids.stream()
                .flatMap(id -> ScenarioRules.unknownPart(id, bench).stream())
                .toList();
    }

    static List<Finding> terminals(Scenario bench, Collection<TerminalRef> terminals) {
        return terminals.stream()
                .flatMap(end -> ScenarioRules.unknownTerminal(end, bench).stream())
                .toList();
    }
}
