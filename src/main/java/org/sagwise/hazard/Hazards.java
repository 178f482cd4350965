package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.Basis;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

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

    private static final Map<String, Hazard> BY_ID =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Hazard::id, hazard -> hazard));

    private Hazards() {}

    /** What may put a caution right, the most promising first; empty where nothing is known. */
    public static List<Cures.Way> cures(Caution caution) {
        return BY_ID.get(caution.id()).all(Cures.class).stream()
                .flatMap(cures -> cures.ways().stream())
                .toList();
    }

    /**
     * On what the numbers of a caution rest: a current that real cells do not keep up is this program's doing, else its
     * limit counts.
     */
    public static Basis basis(Caution caution) {
        return caution.isOfAMoment() ? Basis.TEACHING : limitBasis(caution);
    }

    /** On what the limit of a caution rests; that of a cell or a part counts as published. */
    static Basis limitBasis(Caution caution) {
        return BY_ID.get(caution.id()).listing().basis();
    }

    /**
     * Cells that nobody should use again if a bench was ever joined, or its button pressed, as drawn. Such a cell can
     * look well and fail later.
     *
     * @return in the order of the scenario; empty where nothing of the kind would happen
     */
    public static List<Part> spentCells(Scenario scenario, List<Caution> cautions) {
        Set<String> spent = new HashSet<>();
        for (Caution caution : cautions) {
            BY_ID.get(caution.id()).all(Spends.class).forEach(spends -> spent.addAll(spends.parts(caution)));
        }
        return scenario.partsOf(PartKind.CELL).stream()
                .filter(part -> spent.contains(part.id()))
                .toList();
    }

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
