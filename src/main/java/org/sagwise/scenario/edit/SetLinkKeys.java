package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Makes another joint of a link: its kind, gauge, length or contact resistance.
 *
 * @param link its place in the scenario
 * @param joint how its ends are joined, as a link of a scenario file says it
 */
public record SetLinkKeys(int link, Keys joint) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        if (link < 0 || link >= before.links().size()) {
            return before;
        }
        Link old = before.links().get(link);
        Keys keys = old.keys().without(ScenarioKeys.joint());
        for (var entry : joint.values().entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        List<Link> links = new ArrayList<>(before.links());
        links.set(link, Link.of(keys).between(old.from(), old.to()));
        return before.withLinks(links);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("change.link");
    }
}
