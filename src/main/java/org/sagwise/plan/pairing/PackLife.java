package org.sagwise.plan.pairing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.PackOutcome;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * How much longer packs of cells that were matched last on one charge than packs drawn by lot from
 * the same cells: the engine runs both, in a row on a coil, pressed in the usual way.
 *
 * @param matchedS how long the button can be held in all: the median of the matched sets, s
 * @param drawnS the same of the packs that were drawn, s
 * @param loadA what flows when the cells are full, A
 * @param draws how many packs were drawn
 */
public record PackLife(double matchedS, double drawnS, double loadA, int draws) {

    /** Packs drawn by lot, and matched ones looked at: enough for a median, few enough to wait for. */
    private static final int RUNS = 9;

    private static final long SEED = 1_130;

    /** Current for the coil as a share of the cells' limit: hard use, as after an evening. Our choice. */
    private static final double SHARE_OF_LIMIT = 0.5;

    /** Current over capacity (1/h) where nobody knows the limit. Our choice. */
    private static final double USUAL_RATE = 3;

    private static final double FULL_V = 4.2;

    /**
     * Of the sets that were found among cells of the first set's make.
     *
     * @return empty where there is no choice: as many cells as one set has, or no set
     */
    public static Optional<PackLife> of(Matching matching, Drawer drawer, Catalogue catalogue) {
        if (matching.sets().isEmpty()) {
            return Optional.empty();
        }
        OwnCell first = matching.sets().get(0).cells().get(0);
        List<MatchedSet> sets = matching.sets().stream()
                .filter(set -> isAlike(set.cells().get(0), first))
                .toList();
        List<OwnCell> cells = new ArrayList<>();
        sets.forEach(set -> cells.addAll(set.cells()));
        matching.left().stream().filter(cell -> isAlike(cell, first)).forEach(cells::add);
        int size = matching.wish().size();
        if (cells.size() <= size) {
            return Optional.empty();
        }
        OptionalDouble limit = first.make(catalogue).number("limit_A");
        double loadA = limit.isPresent()
                ? limit.getAsDouble() * SHARE_OF_LIMIT
                : first.capacityAh().orElseThrow() * USUAL_RATE;
        List<Double> matched = sets.stream()
                .limit(RUNS)
                .map(set -> lastsS(set.cells(), loadA, drawer, catalogue))
                .toList();
        SplittableRandom chance = new SplittableRandom(SEED);
        List<Double> drawn = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            List<OwnCell> some = Arrays.stream(SetSearch.shuffled(cells.size(), chance))
                    .limit(size)
                    .mapToObj(cells::get)
                    .toList();
            drawn.add(lastsS(some, loadA, drawer, catalogue));
        }
        return Optional.of(new PackLife(median(matched), median(drawn), loadA, RUNS));
    }

    private static boolean isAlike(OwnCell one, OwnCell other) {
        return one.model().equals(other.model()) && one.figures().equals(other.figures());
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** How much longer, as a share of the pack that was drawn. */
    public double gain() {
        return matchedS / drawnS - 1;
    }

    private static double lastsS(List<OwnCell> cells, double loadA, Drawer drawer, Catalogue catalogue) {
        return PackOutcome.lastsS(row(cells, loadA, drawer, catalogue), catalogue);
    }

    /** The cells in a row on a coil, through joints without resistance. */
    static Scenario row(List<OwnCell> cells, double loadA, Drawer drawer, Catalogue catalogue) {
        List<Part> parts = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        double insideOhm = 0;
        for (int i = 0; i < cells.size(); i++) {
            parts.add(DrawerBench.part(cells.get(i), drawer, catalogue).with("id", "C" + (i + 1)));
            insideOhm += cells.get(i).resistanceOhm().orElse(0);
            if (i > 0) {
                links.add(link("C" + i, "+", "C" + (i + 1), "-"));
            }
        }
        double ohm = Math.max(0.01, cells.size() * FULL_V / loadA - insideOhm);
        parts.add(Part.of("fire", PartKind.SWITCH, "closed_mohm", 0));
        parts.add(Part.of("coil", PartKind.COIL, "ohm", ohm));
        links.add(link("C" + cells.size(), "+", "fire", "1"));
        links.add(link("fire", "2", "coil", "1"));
        links.add(link("coil", "2", "C1", "-"));
        return Scenario.of("", parts, links);
    }

    private static Link link(String from, String fromTerminal, String to, String toTerminal) {
        return Link.ideal(new TerminalRef(from, fromTerminal), new TerminalRef(to, toTerminal));
    }
}
