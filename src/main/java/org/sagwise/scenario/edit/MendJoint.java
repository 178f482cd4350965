package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

/**
 * Gives a named joint another contact resistance. A jumper has none: it is not to be mended.
 *
 * @param link id of the joint
 * @param mohm contact resistance, mΩ, 0 or more
 */
public record MendJoint(String link, double mohm) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        return new SetLinkKeys(place(before), Keys.of("contact_mohm", mohm)).apply(before);
    }

    /** Place of the joint, or -1. */
    private int place(Scenario before) {
        List<Link> links = before.links();
        return IntStream.range(0, links.size())
                .filter(i -> links.get(i).id().equals(Optional.of(link))
                        && !(links.get(i).joint() instanceof Joint.Jumper))
                .findFirst()
                .orElse(-1);
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return place(before) < 0 ? List.of(Finding.of("", Problem.UNKNOWN_LINK, link)) : List.of();
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("change.link");
    }
}
