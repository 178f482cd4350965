package org.sagwise.part;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.sagwise.text.LocalText;

/**
 * What the catalogue says about a part in words: its id, title, description and the source of each
 * of its numbers.
 *
 * @param id catalogue id, unique within its kind, not blank
 * @param title a few words
 * @param about a few sentences: what it is for, what is special about it
 * @param sources where each number comes from, by the key it has in the catalogue file ({@code
 *     internal_mohm}, {@code capacity_mAh} …), in the order of the file
 */
public record Card(String id, LocalText title, LocalText about, Map<String, LocalText> sources) {

    public Card {
        if (id.isBlank()) {
            throw new IllegalArgumentException("an entry needs an id");
        }
        sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    }

    /** Where the number under {@code key} comes from, empty where the card does not say. */
    public Optional<LocalText> source(String key) {
        return Optional.ofNullable(sources.get(key));
    }
}
