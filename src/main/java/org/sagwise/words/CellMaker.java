package org.sagwise.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellFormat;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;

/**
 * Makes a cell of what a line says: completes numbers by the catalogue's most alike cell, and leaves an unknown limit
 * unknown.
 */
final class CellMaker {

    private static final String MODEL = "model";
    private static final String CAPACITY = "capacity_mAh";
    private static final String LIMIT = "limit_A";
    private static final String INTERNAL = "internal_mohm";
    private static final String CHARGE = "charge";
    private static final String REST = "rest_V";
    private static final String GUARD = "guard";

    private final Catalogue catalogue;
    private final Set<Assumed> assumed = new LinkedHashSet<>();

    CellMaker(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What had to be assumed so far. */
    Set<Assumed> assumed() {
        return assumed;
    }

    /** What one cell says besides or instead of what all say. */
    static Keys over(Keys all, Keys own) {
        Keys base = all;
        if (own.has(MODEL) || own.has(CAPACITY)) {
            for (KeySpec spec : PartKind.CELL.keys()) {
                boolean make = spec.tells() == KeySpec.Tells.MAKE || spec.name().equals(MODEL);
                base = make ? base.without(spec.name()) : base;
            }
        }
        if (own.has(CHARGE) || own.has(REST)) {
            base = base.without(CHARGE, REST);
        }
        for (var entry : own.values().entrySet()) {
            base = base.with(entry.getKey(), entry.getValue());
        }
        return base;
    }

    /** Everything that a cell of the scenario file needs. */
    Keys made(Keys said) {
        Keys cell = said.has(MODEL) ? said : numbers(said);
        if (!cell.has(CHARGE) && !cell.has(REST)) {
            cell = cell.with(CHARGE, 1);
            assumed.add(Assumed.of("full"));
        }
        return guarded(cell);
    }

    private Keys guarded(Keys cell) {
        Optional<Keys> guard = cell.group(GUARD);
        if (guard.isEmpty() || guard.get().has("trip_s") && guard.get().has("mohm")) {
            return cell;
        }
        Keys whole = guard.get();
        whole = whole.has("trip_s") ? whole : whole.with("trip_s", Usual.TRIP_S);
        whole = whole.has("mohm") ? whole : whole.with("mohm", Usual.GUARD_MOHM);
        assumed.add(Assumed.of(
                GUARD,
                Assumed.Detail.of(whole.number("trip_s", 0), Unit.SECOND),
                Assumed.Detail.of(whole.number("mohm", 0) / 1000, Unit.OHM)));
        return cell.with(GUARD, whole);
    }

    private Keys numbers(Keys said) {
        if (said.has(CAPACITY) && said.has(LIMIT) && !said.has(INTERNAL)) {
            List<PartModel> fitting =
                    plain().filter(model -> fits(model.keys(), said)).toList();
            if (fitting.size() == 1) {
                String id = fitting.get(0).id();
                assumed.add(Assumed.of("model", Assumed.Detail.of(id)));
                return before(Keys.of(MODEL, id), said.without(CAPACITY, LIMIT, "chemistry", "format"));
            }
        }
        Keys cell = said;
        if (!said.has(CAPACITY) || !said.has(INTERNAL)) {
            PartModel like = plain().min(alike(said)).orElseThrow();
            List<String> taken = new ArrayList<>();
            for (String key : List.of(CAPACITY, INTERNAL)) {
                if (!said.has(key)) {
                    double value = like.keys().number(key, 0);
                    cell = cell.with(key, value);
                    taken.add(key);
                    assumed.add(Assumed.of(
                            key,
                            key.equals(CAPACITY)
                                    ? Assumed.Detail.of(value / 1000, Unit.AMPERE_HOUR)
                                    : Assumed.Detail.of(value / 1000, Unit.OHM),
                            Assumed.Detail.of(like.id())));
                }
            }
        }
        if (!said.has(LIMIT)) {
            assumed.add(Assumed.of("limit"));
        }
        return cell;
    }

    private static Keys before(Keys first, Keys rest) {
        Keys all = first;
        for (var entry : rest.values().entrySet()) {
            all = all.with(entry.getKey(), entry.getValue());
        }
        return all;
    }

    /** Models without a false label and without a board of their own. */
    private java.util.stream.Stream<PartModel> plain() {
        return catalogue.models(PartKind.CELL).all().stream()
                .filter(model -> !model.keys().has(GUARD) && !model.keys().has("claimed_mAh"));
    }

    private static boolean fits(Keys model, Keys said) {
        return List.of(CAPACITY, LIMIT, "chemistry", "format").stream()
                .allMatch(key -> !said.has(key)
                        || said.values().get(key).equals(model.values().get(key)));
    }

    /** The same chemistry first (INR where nobody says one), then size, then capacity. */
    private static Comparator<PartModel> alike(Keys said) {
        String chemistry = said.text("chemistry").orElse("INR");
        String format = said.text("format").orElse(CellFormat.USUAL.trade());
        return Comparator.<PartModel>comparingInt(
                        model -> model.keys().text("chemistry").equals(Optional.of(chemistry)) ? 0 : 1)
                .thenComparingInt(model -> model.keys().text("format").equals(Optional.of(format)) ? 0 : 1)
                .thenComparingDouble(model -> apart(model.keys(), said, CAPACITY) + apart(model.keys(), said, LIMIT));
    }

    private static double apart(Keys model, Keys said, String key) {
        return said.number(key).isPresent() ? Math.abs(Math.log(model.number(key, 1) / said.number(key, 1))) : 0;
    }
}
