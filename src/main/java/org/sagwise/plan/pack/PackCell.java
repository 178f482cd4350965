package org.sagwise.plan.pack;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.Fitness;
import org.sagwise.plan.pairing.MatchedSet;
import org.sagwise.plan.pairing.Matching;
import org.sagwise.plan.pairing.PairingWish;

/** A kind of cell that may be taken: as many as wanted of a model, or those that somebody has. */
public abstract class PackCell {

    private final String name;
    private final String format;

    private PackCell(String name, String format) {
        this.name = name;
        this.format = format;
    }

    /** As many new ones of a model as wanted. */
    public static PackCell of(PartModel model) {
        return endless(model.id(), Keys.of("model", model.id()), model.keys());
    }

    /** As many as wanted that are like this one. */
    static PackCell endless(String name, Keys one, Keys make) {
        return new PackCell(name, format(make, Keys.NONE)) {
            @Override
            Optional<List<Keys>> take(int count) {
                return Optional.of(Collections.nCopies(count, one));
            }
        };
    }

    /**
     * What is in a drawer and still used, a kind for each model, or name where there is no model. What is worn, leaks
     * or was not measured goes into no pack, and is told as left out.
     */
    public static List<PackCell> of(Drawer drawer, Catalogue catalogue) {
        Map<String, List<OwnCell>> kinds = drawer.inUse().stream()
                .collect(Collectors.groupingBy(
                        own -> own.model().orElse(own.name()), LinkedHashMap::new, Collectors.toList()));
        return kinds.entrySet().stream()
                .<PackCell>map(kind -> new Owned(kind.getKey(), kind.getValue(), drawer, catalogue))
                .toList();
    }

    private static String format(Keys own, Keys model) {
        return PartKind.CELL.effective(own, model, Keys.NONE).word("format").orElseThrow();
    }

    /** Whether a model is one that nobody would choose on purpose: worn, or sold for what it is not. */
    public static boolean isPoor(PartModel model) {
        return model.keys().has("claimed_A") || model.keys().has("claimed_mAh");
    }

    /** What it is called: a model's id. */
    public String name() {
        return name;
    }

    /** Its size by the trade, such as {@code 18650}. */
    public String format() {
        return format;
    }

    /** Own cells that go into no pack, and why. */
    public Map<OwnCell, Fitness> leftOut() {
        return Map.of();
    }

    /** So many of them, without charge; empty where there are too few that belong together. */
    abstract Optional<List<Keys>> take(int count);

    /** How many there are that may be taken; no more than anybody asks for where there is no end of them. */
    int there() {
        return PackWish.MOST_CELLS;
    }

    /** Cells of a drawer. Those that are married come as a whole set or not at all. */
    private static final class Owned extends PackCell {

        private final Drawer drawer;
        private final Catalogue catalogue;
        private final Map<OwnCell, Fitness> leftOut = new LinkedHashMap<>();
        private final List<OwnCell> fit;
        private final Map<String, List<OwnCell>> married;

        Owned(String name, List<OwnCell> cells, Drawer drawer, Catalogue catalogue) {
            super(name, cells.get(0).make(catalogue).word("format").orElseThrow());
            this.drawer = drawer;
            this.catalogue = catalogue;
            PairingWish any = wish(2, true);
            cells.forEach(cell -> Fitness.against(cell, any, catalogue).ifPresent(why -> leftOut.put(cell, why)));
            fit = cells.stream().filter(cell -> !leftOut.containsKey(cell)).toList();
            married = fit.stream()
                    .filter(cell -> cell.marriage().isPresent())
                    .collect(Collectors.groupingBy(cell -> cell.marriage().get().set()));
        }

        private static PairingWish wish(int size, boolean marriedToo) {
            return new PairingWish(
                    size, PairingWish.PAIRS.capacityWeight(), PairingWish.PAIRS.resistanceWeight(), marriedToo);
        }

        @Override
        public Map<OwnCell, Fitness> leftOut() {
            return Collections.unmodifiableMap(leftOut);
        }

        @Override
        int there() {
            return fit.size();
        }

        @Override
        Optional<List<Keys>> take(int count) {
            Optional<List<OwnCell>> found = count == 1 ? largest() : set(count);
            return found.map(cells -> cells.stream()
                    .map(own -> DrawerBench.keys(own, drawer, catalogue).without("charge", "rest_V"))
                    .toList());
        }

        private Optional<List<OwnCell>> largest() {
            return fit.stream()
                    .filter(cell -> cell.marriage().isEmpty())
                    .max(Comparator.comparingDouble(cell -> cell.capacityAh().orElseThrow()))
                    .map(List::of);
        }

        /** A set that is married, or the best that pairing finds, whichever is more alike. */
        private Optional<List<OwnCell>> set(int count) {
            PairingWish wish = wish(count, false);
            Stream<MatchedSet> whole = married.entrySet().stream()
                    .filter(set -> set.getValue().size() == count
                            && drawer.sets().get(set.getKey()).size() == count)
                    .map(set -> MatchedSet.of(set.getValue(), wish));
            return Stream.concat(whole, matched(fit, wish).stream())
                    .min(Comparator.comparingDouble(MatchedSet::cost))
                    .map(MatchedSet::cells);
        }

        private List<MatchedSet> matched(Collection<OwnCell> cells, PairingWish wish) {
            return Matching.of(new Drawer(List.copyOf(cells), Optional.empty()), wish, catalogue)
                    .sets();
        }
    }
}
