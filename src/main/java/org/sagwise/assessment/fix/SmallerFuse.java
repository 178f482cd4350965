package org.sagwise.assessment.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.SetPartKeys;

/**
 * Fits the largest fuse of the catalogue that opens before cell or wire suffers, and bears what flows in normal use.
 */
final class SmallerFuse implements FixRule {

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        double share = caution.limit() / caution.measured();
        return caution.parts().stream()
                .flatMap(id -> assessment.scenario().part(id).stream())
                .filter(part -> part.kind() == PartKind.FUSE)
                .flatMap(part -> fitting(assessment, part, share).stream())
                .toList();
    }

    private static List<Fix> fitting(Assessment assessment, Part fuse, double share) {
        double carriedA = assessment
                .bench()
                .fired()
                .part(fuse.id())
                .map(it -> Math.abs(it.currentA()))
                .orElse(0.0);
        double ratingA = assessment.bench().spec(fuse.id(), FuseSpec.class).ratingA();
        return assessment.bench().catalogue().models(PartKind.FUSE).all().stream()
                .filter(model -> ratingA(model) <= ratingA * share && ratingA(model) >= carriedA)
                .max(Comparator.comparingDouble(SmallerFuse::ratingA))
                .map(model -> new Fix(
                        FixKind.SMALLER_FUSE,
                        List.of(List.of(fuse), new Fix.Quantity(ratingA(model), Unit.AMPERE)),
                        Set.of(fuse.id()),
                        new SetPartKeys(
                                fuse.id(), Keys.of("model", model.id()), Set.of("rating_A", "mohm", "i2t_A2s"))))
                .stream()
                .toList();
    }

    private static double ratingA(PartModel model) {
        return model.values().need("rating_A");
    }
}
