package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Opens a joint and puts a meter on amps into the gap, where it stays. The joint leads to its red
 * terminal as it led to the other part before; the meter in the hand, which counted there, is laid
 * aside.
 *
 * @param link place of the joint in the scenario
 */
public record MeterInLine(int link) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (link < 0
                || link >= before.links().size()
                || before.parts().size() >= ScenarioKeys.MOST_PARTS
                || before.links().size() >= ScenarioKeys.MOST_LINKS) {
            return before;
        }
        Link old = before.links().get(link);
        Part meter = Part.of(
                new FreshIds(before).next(PartKind.METER), PartKind.METER, MeterMode.KEY, MeterMode.AMPS.word());
        Keys joint = old.keys().without("from", "to", "id", Keys.FOREIGN);
        boolean turned = before.probes()
                .map(Probes::red)
                .filter(red -> red.equals(old.to()))
                .isPresent();
        Scenario open = new CutLinks(Set.of(link)).apply(before).plus(meter);
        Scenario half =
                new JoinTerminals(List.of(old.from(), meter.terminal(turned ? "black" : "red")), joint).apply(open);
        return new JoinTerminals(List.of(meter.terminal(turned ? "red" : "black"), old.to()), Keys.of("ideal", true))
                .apply(half)
                .withProbes(Optional.empty());
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("meter-in-line");
    }
}
