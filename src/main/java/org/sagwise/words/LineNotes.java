package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Fault;

/** What is known of a line while it is read: what it says so far, where, and what is wrong with it. */
final class LineNotes {

    private final Catalogue catalogue;
    private final Recipe recipe = new Recipe();
    private final List<Complaint> complaints = new ArrayList<>();
    private final Map<String, Span> places = new LinkedHashMap<>();
    private final Map<Integer, Span> letters = new LinkedHashMap<>();

    LineNotes(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Recipe recipe() {
        return recipe;
    }

    List<Complaint> complaints() {
        return complaints;
    }

    /** Where a key of a part was said, such as {@code B.rest_V}; that of all cells is {@code cells.rest_V}. */
    Map<String, Span> places() {
        return places;
    }

    /** The cells that are named by their letters, and where. */
    Map<Integer, Span> letters() {
        return letters;
    }

    void complain(Span span, Fault fault, String... details) {
        complaints.add(Complaint.of(span, fault, details));
    }

    /** What nothing can be made of. */
    void strange(Item item) {
        complaints.add(TermReader.strange(item, catalogue));
    }

    /**
     * Reads amounts, words and ids as keys of a part.
     *
     * @param before what was said of it already
     * @param where whose keys they are
     */
    Keys read(Clause clause, Keys before, List<Item> items, String where) {
        TermReader reader = new TermReader(clause, before, catalogue, complaints);
        Keys keys = reader.read(items);
        reader.places().forEach((key, span) -> {
            if (places.putIfAbsent(where + "." + key, span) != null
                    && before.names().contains(key)) {
                complain(span, WordsFault.TWICE);
            }
        });
        return keys;
    }

    /** Takes the letters of cells at the front. */
    List<Integer> letters(List<Item> items) {
        List<Integer> cells = new ArrayList<>();
        while (!items.isEmpty() && items.get(0) instanceof Item.Letter letter) {
            cells.add(letter.cell());
            letters.put(letter.cell(), letter.span());
            items.remove(0);
        }
        return cells;
    }
}
