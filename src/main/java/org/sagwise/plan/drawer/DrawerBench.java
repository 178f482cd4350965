package org.sagwise.plan.drawer;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetPartKeys;

/**
 * A cell of the drawer as it lies on a bench: freshly charged, with the figures that were measured
 * last. Its mark and the set to which it is married go with it, so a stranger who gets the bench
 * needs no drawer.
 */
public final class DrawerBench {

    /** What one piece says of itself and another in its place must not keep. */
    private static final Set<String> OF_PIECE = Set.of("model", "health", "mark", "married", "married_cells", "label");

    private DrawerBench() {}

    /**
     * The cell as a part, ready to be laid on the bench.
     *
     * @param drawer where its fellows of a married set are
     */
    public static Part part(OwnCell cell, Drawer drawer, Catalogue catalogue) {
        return Part.of("A", PartKind.CELL, flat(keys(cell, drawer, catalogue).with("charge", 1)));
    }

    /** Puts it in place of another cell of a bench; how full and warm that was stays as it is. */
    public static Edit inPlaceOf(String part, OwnCell cell, Drawer drawer, Catalogue catalogue) {
        Set<String> cleared = PartKind.CELL.keys().stream()
                .filter(spec -> spec.tells() == KeySpec.Tells.MAKE || OF_PIECE.contains(spec.name()))
                .map(KeySpec::name)
                .collect(Collectors.toCollection(HashSet::new));
        cleared.add("label");
        return new SetPartKeys(part, keys(cell, drawer, catalogue), cleared);
    }

    private static Object[] flat(Keys keys) {
        return keys.values().entrySet().stream()
                .flatMap(entry -> List.of(entry.getKey(), entry.getValue()).stream())
                .toArray();
    }

    /** What it says of itself on a bench, without how full it is. */
    public static Keys keys(OwnCell cell, Drawer drawer, Catalogue catalogue) {
        Keys keys = cell.model().map(id -> Keys.of("model", id)).orElse(Keys.NONE);
        for (String name : cell.figures().names()) {
            keys = keys.with(name, cell.figures().values().get(name));
        }
        if (cell.capacityAh().isPresent()) {
            keys = keys.with(
                    "capacity_mAh", DrawerKeys.written(cell.capacityAh().getAsDouble() * 1_000));
        }
        OptionalDouble ohm = cell.resistanceOhm();
        if (ohm.isPresent()) {
            double board = boardOhm(cell.make(catalogue));
            keys = keys.with("internal_mohm", DrawerKeys.written(Math.max(0, ohm.getAsDouble() - board) * 1_000));
        }
        keys = keys.with("mark", cell.mark()).with("label", cell.mark());
        if (cell.marriage().isPresent()) {
            String set = cell.marriage().get().set();
            keys = keys.with("married", set)
                    .with(
                            "married_cells",
                            drawer.sets().getOrDefault(set, List.of()).size());
        }
        return keys;
    }

    /** A meter at the cell's ends reads its board too; a scenario books the board by itself. */
    private static double boardOhm(EffectiveKeys make) {
        return make.group("guard").map(guard -> guard.number("mohm", 0) / 1_000).orElse(0.0);
    }

    /** Whether enough is known of a cell to compute with it: a model, or capacity and resistance. */
    public static boolean canLie(OwnCell cell) {
        boolean capacity = cell.capacityAh().isPresent() || cell.figures().has("capacity_mAh");
        boolean ohm = cell.resistanceOhm().isPresent() || cell.figures().has("internal_mohm");
        return cell.model().isPresent() || (capacity && ohm);
    }
}
