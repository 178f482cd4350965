package org.sagwise.assessment.fix;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.CellSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;

/**
 * Puts a sound cell in place of one that nothing done to the circuit makes usable again: one like a sound cell that
 * lies there already, else an ordinary one of the same size.
 */
final class SoundCell implements FixRule {

    /** Cells whose full voltages differ by less suit the same charger and device, V. */
    private static final double SAME_FULL_V = 0.1;

    /** What is wrong with a cell itself, however it is joined: such a cell is replaced and neither kept nor charged. */
    static final Set<String> OF_THE_CELL_ITSELF = Set.of(
            "label-claims", "cell-deep-discharged", "cell-above-full", "cell-hot", "torn-wrap", "torn-wrap-touching");

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Set<String> unsound = unsound(assessment);
        return caution.parts().stream()
                .limit(1)
                .flatMap(id -> assessment.scenario().part(id).stream())
                .filter(part -> part.kind() == PartKind.CELL)
                .flatMap(part -> sound(assessment, part, unsound).stream())
                .toList();
    }

    /** Ids of the cells that are to be replaced whatever is done to the circuit. */
    static Set<String> unsound(Assessment assessment) {
        Set<String> ids = new HashSet<>();
        assessment.cautions().stream()
                .filter(caution -> OF_THE_CELL_ITSELF.contains(caution.id()))
                .forEach(caution -> ids.addAll(caution.parts()));
        return ids;
    }

    private static Optional<Fix> sound(Assessment assessment, Part old, Set<String> unsound) {
        Optional<Part> like = assessment.scenario().partsOf(PartKind.CELL).stream()
                .filter(part -> !unsound.contains(part.id()) && !part.id().equals(old.id()))
                .max(Comparator.comparingDouble(
                        part -> assessment.bench().cells().get(part.id()).spec().limitA()));
        return like.map(part -> LikeCell.fix(old, part)).or(() -> ordinary(assessment, old));
    }

    /** The catalogue's cell of the same size that may give the most, with nothing claimed that is not so. */
    private static Optional<Fix> ordinary(Assessment assessment, Part old) {
        ResolvedCell known = assessment.bench().cells().get(old.id());
        return assessment.bench().catalogue().models(PartKind.CELL).all().stream()
                .filter(model -> isSound(CellSpec.of(model.values()), known.spec()))
                .max(Comparator.comparingDouble(model -> model.values().need("limit_A")))
                .map(model -> replacement(old, model));
    }

    private static boolean isSound(CellSpec cell, CellSpec known) {
        return cell.format() == known.format()
                && Math.abs(cell.fullV() - known.fullV()) < SAME_FULL_V
                && cell.claim().isEmpty()
                && cell.guard().isEmpty()
                && cell.internalOhm() > 0;
    }

    private static Fix replacement(Part old, PartModel model) {
        CellSpec cell = CellSpec.of(model.values());
        return new Fix(
                FixKind.NEW_CELL,
                List.of(
                        List.of(old),
                        new Fix.Quantity(cell.capacityAh(), Unit.AMPERE_HOUR),
                        new Fix.Quantity(cell.limitA(), Unit.AMPERE)),
                Set.of(old.id()),
                LikeCell.instead(old, Keys.of("model", model.id()).with("charge", 1)));
    }
}
