package org.sagwise.assessment.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Charges the emptier cells by themselves until they rest at the volts of the fullest. */
final class SameCharge implements FixRule {

    private static final double ALIKE_V = 0.005;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Map<String, ResolvedCell> cells = assessment.bench().cells();
        Set<String> unsound = SoundCell.unsound(assessment);
        if (caution.parts().stream().anyMatch(unsound::contains)) {
            return List.of();
        }
        List<ResolvedCell> concerned = assessment.scenario().partsOf(PartKind.CELL).stream()
                .filter(part -> !unsound.contains(part.id()))
                .map(part -> cells.get(part.id()))
                .toList();
        double fullestV = concerned.stream()
                .max(Comparator.comparingDouble(cell -> cell.start().restV()))
                .map(cell -> Math.min(cell.start().restV(), cell.spec().fullV()))
                .orElse(Double.NaN);
        List<Part> emptier = concerned.stream()
                .filter(cell -> cell.start().restV() < fullestV - ALIKE_V)
                .map(ResolvedCell::part)
                .toList();
        if (emptier.isEmpty()) {
            return List.of();
        }
        Set<String> ids = new TreeSet<>(emptier.stream().map(Part::id).toList());
        return List.of(new Fix(
                FixKind.CHARGE,
                List.of(emptier, new Fix.Quantity(fullestV, Unit.VOLT)),
                ids,
                scenario -> charged(scenario, ids, fullestV, cells)));
    }

    private static Scenario charged(Scenario scenario, Set<String> ids, double volts, Map<String, ResolvedCell> cells) {
        Scenario changed = scenario;
        for (String id : ids) {
            changed = changed.withPart(id, part -> charged(part, volts, cells.get(id)));
        }
        return changed;
    }

    private static Part charged(Part part, double volts, ResolvedCell cell) {
        return part.keys().has("rest_V")
                ? part.with("rest_V", volts)
                : part.with("charge", Math.min(1, cell.spec().restCurve().chargeAt(volts)));
    }
}
