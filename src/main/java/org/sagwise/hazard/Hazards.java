package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.sagwise.reading.Bench;

/** All kinds of hazards. */
public final class Hazards {

    /** In the order in which docs/hazards.md lists them. */
    static final List<Section> SECTIONS = List.of(
            ShortHazards.SECTION,
            CellHazards.SECTION,
            PackHazards.SECTION,
            WireHazards.SECTION,
            DeviceHazards.SECTION,
            AheadHazards.SECTION);

    /** In the order of their rank, in which cautions of the same gravity are told. */
    static final List<Hazard> ALL = SECTIONS.stream()
            .flatMap(section -> section.hazards().stream())
            .sorted(Comparator.comparingInt(Hazard::rank))
            .toList();

    private Hazards() {}

    /**
     * Every caution about a bench, with the button let go and held, the gravest first. What only
     * follows from something graver is left out.
     */
    public static List<Caution> check(Bench bench) {
        HazardContext context = HazardContext.of(bench);
        List<Caution> all = new ArrayList<>();
        for (Hazard hazard : ALL) {
            all.addAll(hazard.check(context));
        }
        List<Caution> left = new Suppression(context).thin(all);
        left.sort(Comparator.comparing(Caution::signal));
        return List.copyOf(left);
    }
}
