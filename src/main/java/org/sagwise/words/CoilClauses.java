package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;

/** Reads what a line says of its coils. */
final class CoilClauses {

    private final LineNotes notes;
    private final Recipe recipe;

    CoilClauses(LineNotes notes) {
        this.notes = notes;
        this.recipe = notes.recipe();
    }

    void read(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        if (Items.take(items, "none").isPresent()) {
            return;
        }
        Optional<Item.Phrase> side = Items.take(items, "side-by-side");
        Optional<Item.Phrase> row = Items.take(items, "in-a-row");
        if (side.isPresent() || row.isPresent()) {
            recipe.layCoils(row.isPresent() ? Recipe.Coils.IN_A_ROW : Recipe.Coils.SIDE_BY_SIDE);
        }
        Items.take(items, "single");
        int count = Items.take(items, "double").isPresent() ? 2 : 1;
        for (int i = 0; i + 1 < items.size(); i++) {
            boolean times = items.get(i) instanceof Item.Times && !(items.get(i + 1) instanceof Item.Gauge);
            if (times || Items.isWhole(items.get(i)) && Items.means(items.get(i + 1), Clause.COIL.word())) {
                count = Items.count(items.remove(i));
                break;
            }
        }
        for (List<Item> one : byOhms(items)) {
            String where = "coil" + recipe.coils().size();
            Keys keys = notes.read(Clause.COIL, Keys.NONE, one, where);
            wound(keys, one);
            for (int i = 0; i < count && recipe.coils().size() < Recipe.MOST_CELLS; i++) {
                recipe.coils().add(keys);
            }
        }
    }

    /** Several ohms in one clause are several coils; what else is said holds for each. */
    private static List<List<Item>> byOhms(List<Item> items) {
        List<Item> ohms = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            boolean counts = i + 1 < items.size()
                    && (Items.means(items.get(i + 1), "wraps") || Items.means(items.get(i + 1), "strands"));
            boolean counted =
                    i > 0 && (Items.means(items.get(i - 1), "wraps") || Items.means(items.get(i - 1), "strands"));
            boolean bare = items.get(i) instanceof Item.Bare && !counts && !counted;
            if (bare || items.get(i) instanceof Item.Amount amount && amount.unit() == Unit.OHM) {
                ohms.add(items.get(i));
            }
        }
        if (ohms.size() < 2) {
            return List.of(items);
        }
        List<List<Item>> coils = new ArrayList<>();
        for (Item ohm : ohms) {
            coils.add(items.stream()
                    .filter(item -> item == ohm || !ohms.contains(item))
                    .toList());
        }
        return coils;
    }

    /** A coil is known by its ohms or by all of its winding. */
    private void wound(Keys keys, List<Item> items) {
        Optional<Keys> wire = keys.group("wire");
        Span span = items.isEmpty()
                ? new Span(0, 0)
                : items.get(0).span().to(items.get(items.size() - 1).span());
        if (wire.isEmpty() && !keys.has("ohm")) {
            notes.complain(span, WordsFault.NO_VALUE, "Ω");
            return;
        }
        wire.ifPresent(said -> {
            List<String> lacks = new ArrayList<>();
            if (!said.has("alloy")) {
                lacks.add("alloy");
            }
            if (!said.has("awg") && !said.has("diameter_mm")) {
                lacks.add("gauge");
            }
            if (!said.has("wraps")) {
                lacks.add("wraps");
            }
            lacks.forEach(lack -> notes.complain(span, WordsFault.WOUND_LACKS.of(lack)));
        });
    }
}
