package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.edit.CutLinks;
import org.sagwise.scenario.edit.Edit;

/** Takes away the one joint that leads past the coil: the one that leaves the fewest cautions. */
final class JointAway implements FixRule {

    /** Benches with more joints are not searched. */
    private static final int MOST_JOINTS = 60;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        if (isCoilItself(scenario, caution)) {
            return List.of();
        }
        List<Integer> candidates = new ArrayList<>(caution.links());
        if (candidates.isEmpty()) {
            IntStream.range(0, scenario.links().size()).forEach(candidates::add);
        }
        if (candidates.size() > MOST_JOINTS) {
            return List.of();
        }
        candidates.sort(Collections.reverseOrder());
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        for (int place : candidates) {
            Optional<Integer> left = leftWithout(assessment, place);
            if (left.isPresent() && left.get() < fewest) {
                best = place;
                fewest = left.get();
            }
        }
        return best < 0 ? List.of() : List.of(fix(scenario, best));
    }

    /** Whether the coil is the short, so that no joint leads past it. */
    private static boolean isCoilItself(Scenario scenario, Caution caution) {
        return caution.id().equals("pack-shorted")
                && caution.links().isEmpty()
                && scenario.partsOf(PartKind.COIL).stream()
                        .anyMatch(coil -> caution.parts().contains(coil.id()));
    }

    /** How many cautions are left without a joint; empty if one as grave as any before is. */
    private static Optional<Integer> leftWithout(Assessment assessment, int place) {
        List<Caution> left = Hazards.check(Bench.of(
                away(place).apply(assessment.scenario()), assessment.bench().catalogue()));
        boolean worse = left.stream()
                .anyMatch(caution ->
                        caution.signal().compareTo(assessment.cautions().get(0).signal()) <= 0);
        return worse ? Optional.empty() : Optional.of(left.size());
    }

    private static Fix fix(Scenario scenario, int place) {
        Link link = scenario.links().get(place);
        return new Fix(
                FixKind.JOINT_AWAY,
                List.of(TerminalName.of(scenario, link.from()), TerminalName.of(scenario, link.to())),
                Set.of(),
                before -> away(before.links().indexOf(link)));
    }

    private static Edit away(int place) {
        return new CutLinks(Set.of(place));
    }
}
