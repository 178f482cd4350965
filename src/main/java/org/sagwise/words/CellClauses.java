package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.part.key.Keys;

/** Reads what a line says of its cells: how they lie, and what all or single ones are. */
final class CellClauses {

    private final LineNotes notes;
    private final Recipe recipe;

    CellClauses(LineNotes notes) {
        this.notes = notes;
        this.recipe = notes.recipe();
    }

    /** What all cells say: layout, model or numbers, how full. */
    void all(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        arrange(items);
        Items.take(items, "reversed").ifPresent(phrase -> {
            if (recipe.count() == 1) {
                recipe.reversed().add(0);
            } else {
                notes.complain(phrase.span(), WordsFault.OUT_OF_PLACE, phrase.text());
            }
        });
        recipe.sayOfCells(notes.read(Clause.CELLS, recipe.cells(), items, "cells"));
    }

    private void arrange(List<Item> items) {
        for (Item item : List.copyOf(items)) {
            if (item instanceof Item.Arranged arranged) {
                items.remove(item);
                arrange(arranged);
            }
        }
        if (Items.take(items, "single").isPresent() && recipe.layout().isEmpty()) {
            recipe.arrange(new Item.Arranged(new Span(0, 0), 1, 1));
        }
        Optional<Item> count = counted(items);
        Optional<Item.Phrase> side = Items.take(items, "side-by-side");
        Optional<Item.Phrase> row = Items.take(items, "in-a-row");
        if (count.isEmpty()) {
            boolean unknown = recipe.layout().isEmpty();
            Stream.of(side, row)
                    .flatMap(Optional::stream)
                    .filter(phrase -> unknown)
                    .forEach(phrase -> notes.complain(phrase.span(), WordsFault.NO_VALUE, phrase.text()));
            side.filter(phrase -> recipe.rows() > 1 && recipe.side() == 1).ifPresent(this::contradiction);
            row.filter(phrase -> recipe.side() > 1 && recipe.rows() == 1).ifPresent(this::contradiction);
            return;
        }
        items.remove(count.get());
        int cells = Items.count(count.get());
        if (cells > 1 && side.isEmpty() && row.isEmpty()) {
            String number = String.valueOf(cells);
            notes.complain(count.get().span(), WordsFault.WHICH_LAYOUT, number, number + "p", number + "s");
            return;
        }
        arrange(new Item.Arranged(count.get().span(), row.isPresent() ? cells : 1, row.isPresent() ? 1 : cells));
    }

    private void contradiction(Item.Phrase phrase) {
        notes.complain(phrase.span(), WordsFault.TWICE);
    }

    void arrange(Item.Arranged arranged) {
        if (recipe.layout().isPresent()) {
            notes.complain(arranged.span(), WordsFault.TWICE);
        } else if (arranged.rows() < 1
                || arranged.side() < 1
                || arranged.rows() * arranged.side() > Recipe.MOST_CELLS) {
            notes.complain(arranged.span(), WordsFault.TOO_MANY_CELLS, String.valueOf(Recipe.MOST_CELLS));
        } else {
            recipe.arrange(arranged);
        }
    }

    /** The number of {@code 2 cells} or {@code 2×}. */
    private static Optional<Item> counted(List<Item> items) {
        return IntStream.range(0, items.size())
                .filter(i -> items.get(i) instanceof Item.Times
                        || Items.isWhole(items.get(i))
                                && (i == 0 || i + 1 < items.size() && isCounted(items.get(i + 1))))
                .mapToObj(items::get)
                .findFirst();
    }

    private static boolean isCounted(Item item) {
        return Items.means(item, "cells") || Items.means(item, "side-by-side") || Items.means(item, "in-a-row");
    }

    /** What single cells say. */
    void own(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        List<Integer> cells = notes.letters(items);
        boolean turned = Items.take(items, "reversed").isPresent();
        for (int cell : cells) {
            if (turned) {
                recipe.reversed().add(cell);
            }
            if (!items.isEmpty()) {
                String name = String.valueOf((char) ('A' + cell));
                Keys before = recipe.own().getOrDefault(cell, Keys.NONE);
                recipe.own().put(cell, notes.read(Clause.CELLS, before, items, name));
            }
        }
        if (!turned && items.isEmpty()) {
            Item last = clause.get(clause.size() - 1);
            notes.complain(last.span(), WordsFault.NO_VALUE, "A");
        }
    }
}
