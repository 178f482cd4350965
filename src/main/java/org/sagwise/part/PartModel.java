package org.sagwise.part;

import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;

/**
 * A model of part, or a ready-made part, as the catalogue has it: keys of the same table as a part's
 * own.
 *
 * @param card what the catalogue says about it in words
 * @param kind what kind of part
 * @param keys what it says, in the order of the catalogue file
 */
public record PartModel(Card card, PartKind kind, Keys keys) implements CatalogueEntry {

    /** What holds for a part of this model that says nothing itself. */
    public EffectiveKeys values() {
        return kind.effective(Keys.NONE, keys, Keys.NONE);
    }
}
