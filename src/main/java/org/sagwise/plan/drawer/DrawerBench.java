package org.sagwise.plan.drawer;

import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/**
 * A cell of the drawer as it lies on a bench: freshly charged, with the figures that were measured
 * last. Its mark and the set to which it is married go with it, so a stranger who gets the bench
 * needs no drawer.
 */
public final class DrawerBench {

    /** What a cell of the drawer says on a bench, and another one that takes its place must not keep. */
    public static final List<String> OWN = List.of(
            "model",
            "chemistry",
            "format",
            "capacity_mAh",
            "internal_mohm",
            "limit_A",
            "mark",
            "married",
            "married_cells",
            "label");

    private DrawerBench() {}

    /**
     * The cell as a part, ready to be laid on the bench.
     *
     * @param drawer where its fellows of a married set are
     */
    public static Part part(OwnCell cell, Drawer drawer, Catalogue catalogue) {
        return Part.of("A", PartKind.CELL, flat(keys(cell, drawer, catalogue).with("charge", 1)));
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
