package org.sagwise.assessment.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.SetPartKeys;

/**
 * Fits the largest fuse of the catalogue, of the same sort, that opens before cell or wire suffers, and bears what flows
 * in normal use.
 */
final class SmallerFuse implements FixRule {

    /**
     * A sort of fuse.
     *
     * @param kind how it is cured
     * @param bearsKey what it bears for ever, A
     * @param passesKey what may pass without opening it, A
     * @param ownKeys what a part may say itself that the new model says
     */
    private record Sort(FixKind kind, String bearsKey, String passesKey, Set<String> ownKeys) {

        static final Sort MELTS =
                new Sort(FixKind.SMALLER_FUSE, "rating_A", "rating_A", Set.of("rating_A", "mohm", "i2t_A2s"));
        static final Sort RESETS = new Sort(
                FixKind.SMALLER_PTC, "hold_A", "trip_A", Set.of("hold_A", "trip_A", "mohm", "trip_s", "max_V"));
    }

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        double share = caution.limit() / caution.measured();
        return caution.parts().stream()
                .flatMap(id -> assessment.scenario().part(id).stream())
                .filter(part -> part.kind() == PartKind.FUSE || part.kind() == PartKind.PTC)
                .flatMap(part -> fitting(assessment, part, share).stream())
                .toList();
    }

    private static List<Fix> fitting(Assessment assessment, Part fuse, double share) {
        Sort sort = fuse.kind() == PartKind.FUSE ? Sort.MELTS : Sort.RESETS;
        double carriedA = assessment
                .bench()
                .fired()
                .part(fuse.id())
                .map(it -> Math.abs(it.currentA()))
                .orElse(0.0);
        double passesA = assessment.bench().values(fuse.id()).need(sort.passesKey());
        return assessment.bench().catalogue().models(fuse.kind()).all().stream()
                .filter(model -> model.values().need(sort.passesKey()) <= passesA * share
                        && model.values().need(sort.bearsKey()) >= carriedA)
                .max(Comparator.comparingDouble(model -> model.values().need(sort.bearsKey())))
                .map(model -> new Fix(
                        sort.kind(),
                        List.of(List.of(fuse), new Fix.Quantity(model.values().need(sort.bearsKey()), Unit.AMPERE)),
                        Set.of(fuse.id()),
                        new SetPartKeys(fuse.id(), Keys.of("model", model.id()), sort.ownKeys())))
                .stream()
                .toList();
    }
}
