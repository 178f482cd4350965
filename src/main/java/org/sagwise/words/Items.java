package org.sagwise.words;

import java.util.List;
import java.util.Optional;

/** What stands in a clause: asked for, and taken out bit by bit as it is understood. */
final class Items {

    private Items() {}

    /** Whether it is a phrase of this meaning. */
    static boolean means(Item item, String id) {
        return item instanceof Item.Phrase phrase && phrase.means(id);
    }

    static boolean has(List<Item> items, String id) {
        return items.stream().anyMatch(item -> means(item, id));
    }

    /** Takes a phrase out of a clause. */
    static Optional<Item.Phrase> take(List<Item> items, String id) {
        Optional<Item.Phrase> found = items.stream()
                .filter(item -> means(item, id))
                .map(Item.Phrase.class::cast)
                .findFirst();
        found.ifPresent(items::remove);
        return found;
    }

    /** Whether it is a bare number of up to two digits. */
    static boolean isWhole(Item item) {
        return item instanceof Item.Bare bare && bare.text().matches("[1-9]\\d?");
    }

    /** The number that it is, where it is a whole one or one of times. */
    static int count(Item item) {
        return item instanceof Item.Times times ? times.count() : (int) ((Item.Bare) item).value();
    }
}
