package org.sagwise.assessment.fix;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.scenario.edit.Together;

/** Cleans and tightens joints: they get what a sled clip of the catalogue has. */
final class SoundJoint implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        double ohm = assessment
                .bench()
                .catalogue()
                .contacts()
                .find("sled-clip")
                .orElseThrow()
                .ohm();
        List<Link> joints = caution.links().stream().map(scenario.links()::get).toList();
        Set<String> ids = new LinkedHashSet<>();
        joints.forEach(link -> link.id().ifPresent(ids::add));
        List<List<TerminalName>> ends = joints.stream()
                .map(link -> List.of(TerminalName.of(scenario, link.from()), TerminalName.of(scenario, link.to())))
                .toList();
        return List.of(new Fix(
                FixKind.SOUND_JOINT,
                List.of(new Fix.Joints(ends), new Fix.Quantity(ohm, Unit.OHM)),
                ids,
                before -> tightened(before, joints, ohm * 1000)));
    }

    private static Edit tightened(Scenario scenario, List<Link> joints, double mohm) {
        return new Together(IntStream.range(0, scenario.links().size())
                .filter(place -> joints.contains(scenario.links().get(place)))
                .<Edit>mapToObj(place ->
                        new SetLinkKeys(place, tightened(scenario.links().get(place), mohm)))
                .toList());
    }

    private static Keys tightened(Link link, double mohm) {
        return link.keys()
                .group("jumper")
                .map(jumper -> Keys.of("jumper", jumper.with("contacts_mohm", mohm)))
                .orElse(Keys.of("contact_mohm", mohm));
    }
}
