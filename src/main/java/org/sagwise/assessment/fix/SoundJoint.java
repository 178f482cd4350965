package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;

/** Cleans and tightens joints: they get what a sled clip of the catalogue has. */
final class SoundJoint implements FixRule {

    /** The catalogue's sled clip, mΩ: typical. */
    private static final double USUAL_MOHM = 4;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        List<Link> joints = caution.links().stream().map(scenario.links()::get).toList();
        Set<String> ids = new LinkedHashSet<>();
        joints.forEach(link -> link.id().ifPresent(ids::add));
        List<List<TerminalName>> ends = joints.stream()
                .map(link -> List.of(TerminalName.of(scenario, link.from()), TerminalName.of(scenario, link.to())))
                .toList();
        return List.of(new Fix(
                FixKind.SOUND_JOINT,
                List.of(new Fix.Joints(ends), new Fix.Quantity(USUAL_MOHM / 1000, Unit.OHM)),
                ids,
                before -> tightened(before, joints)));
    }

    private static Scenario tightened(Scenario scenario, List<Link> joints) {
        List<Link> links = new ArrayList<>(scenario.links());
        links.replaceAll(link -> joints.contains(link) ? tightened(link) : link);
        return scenario.withLinks(links);
    }

    private static Link tightened(Link link) {
        return link.joint() instanceof Joint.Jumper
                ? Link.of(link.keys()
                        .with(
                                "jumper",
                                link.keys().group("jumper").orElseThrow().with("contacts_mohm", USUAL_MOHM)))
                : Link.of(link.keys().with("contact_mohm", USUAL_MOHM));
    }
}
