package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.Card;
import org.sagwise.text.LocalText;

/**
 * Reads the words of a catalogue entry and sees to it that each of its numbers has a source: {@code
 * source} names the one for all of them, {@code sources} those that differ.
 */
final class CatalogueCards {

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,47}");

    private final Supplier<Map<String, LocalText>> texts;

    /**
     * Cards that may cite these sources.
     *
     * @param texts gives the words of each source by its key
     */
    CatalogueCards(Supplier<Map<String, LocalText>> texts) {
        this.texts = texts;
    }

    /** The card of an entry whose numbers stand in the file. */
    Card read(CatalogueFields fields) {
        return read(fields, fields.numberKeys());
    }

    /** The card of an entry whose numbers have these keys, wherever they stand. */
    Card read(CatalogueFields fields, Set<String> numberKeys) {
        String id = fields.text("id");
        if (!ID.matcher(id).matches() && !id.equals("?")) {
            fields.defect("id", Problem.BAD_ID, id);
        }
        LocalText title = fields.localText("title");
        LocalText about = fields.localText("about");
        Map<String, LocalText> sources = sources(fields, numberKeys);
        return new Card(id.isBlank() ? "?" : id, title, about, sources);
    }

    private Map<String, LocalText> sources(CatalogueFields fields, Set<String> numberKeys) {
        Optional<LocalText> general = fields.has("source") ? fields.oneOf("source", texts.get()) : Optional.empty();
        Map<String, LocalText> own = new LinkedHashMap<>();
        fields.object("sources").ifPresent(differing -> {
            for (String key : differing.keys()) {
                differing.oneOf(key, texts.get()).ifPresent(text -> own.put(key, text));
                if (!numberKeys.contains(key)) {
                    differing.defect(key, Problem.SOURCE_OF_NOTHING, key);
                }
            }
        });
        Map<String, LocalText> all = new LinkedHashMap<>();
        for (String key : numberKeys) {
            Optional.ofNullable(own.get(key))
                    .or(() -> general)
                    .ifPresentOrElse(text -> all.put(key, text), () -> fields.defect(key, Problem.NO_SOURCE, key));
        }
        return all;
    }
}
