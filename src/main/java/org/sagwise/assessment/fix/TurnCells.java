package org.sagwise.assessment.fix;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Turns cells that stand the wrong way round: what was joined to plus is joined to minus. */
final class TurnCells implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {

        List<Part> parts = caution.parts().stream()
                .limit(caution.turned())
                .map(id -> assessment.scenario().part(id).orElseThrow())
                .filter(part -> part.kind() == PartKind.CELL || part.kind() == PartKind.CHARGER)
                .toList();
        if (parts.isEmpty()) {
            return List.of();
        }
        Set<String> ids = Set.copyOf(parts.stream().map(Part::id).toList());
        return List.of(new Fix(FixKind.TURN, List.of(parts), ids, scenario -> turned(scenario, ids)));
    }

    private static Scenario turned(Scenario scenario, Set<String> ids) {
        Map<String, Placement> places = new LinkedHashMap<>(scenario.placement());
        places.replaceAll((id, place) -> ids.contains(id) ? turned(place) : place);
        return scenario.withLinks(
                        scenario.links().stream().map(l -> turned(l, ids)).toList())
                .withProbes(scenario.probes().map(probes -> turned(probes, ids)))
                .withPlacement(places);
    }

    private static Placement turned(Placement place) {
        double turn = (place.turnDegrees() + 180) % 360;
        return Placement.of(place.keys().with("turn", turn));
    }

    private static Link turned(Link link, Set<String> ids) {
        Keys keys = link.keys()
                .with("from", turned(link.from(), ids).toString())
                .with("to", turned(link.to(), ids).toString());
        return Link.of(keys);
    }

    private static Probes turned(Probes probes, Set<String> ids) {
        Keys keys = probes.keys()
                .with("red", turned(probes.red(), ids).toString())
                .with("black", turned(probes.black(), ids).toString());
        return Probes.of(keys);
    }

    private static TerminalRef turned(TerminalRef terminal, Set<String> ids) {
        if (!ids.contains(terminal.part())) {
            return terminal;
        }
        return switch (terminal.terminal()) {
            case "+" -> new TerminalRef(terminal.part(), "-");
            case "-" -> new TerminalRef(terminal.part(), "+");
            default -> terminal;
        };
    }
}
