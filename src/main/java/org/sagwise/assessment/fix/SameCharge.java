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
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.Together;

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
                new Together(emptier.stream()
                        .map(part -> charged(cells.get(part.id()), fullestV))
                        .toList())));
    }

    private static Edit charged(ResolvedCell cell, double volts) {
        Part part = cell.part();
        return part.keys().has("rest_V")
                ? SetPartKeys.set(part.id(), "rest_V", volts)
                : SetPartKeys.set(
                        part.id(), "charge", Math.min(1, cell.spec().restCurve().chargeAt(volts)));
    }
}
