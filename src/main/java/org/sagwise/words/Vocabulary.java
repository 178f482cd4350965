package org.sagwise.words;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.sagwise.text.Languages;

/**
 * The words of a line, in every language of the program at once: the bundle {@code trade-words}. Under each meaning
 * stand its spellings, the one that is written first.
 */
final class Vocabulary {

    /** Words that say nothing by themselves. */
    static final String FILLER = "filler";

    /** One vocabulary: languages and bundles do not change while the program runs. */
    private static final Vocabulary ALL = new Vocabulary();

    private static final String BUNDLE = "org.sagwise.texts.trade-words";

    private final Map<String, Set<String>> meanings = new HashMap<>();
    private final Set<String> spellings = new TreeSet<>();
    private final int longest;

    private Vocabulary() {
        for (Locale locale : Languages.locales()) {
            ResourceBundle bundle = bundle(locale);
            for (String id : bundle.keySet()) {
                for (String spelling : spellings(bundle, id)) {
                    meanings.computeIfAbsent(spelling.toLowerCase(Locale.ROOT), key -> new LinkedHashSet<>())
                            .add(id);
                    if (!id.equals(FILLER)) {
                        spellings.add(spelling);
                    }
                }
            }
        }
        longest = meanings.keySet().stream()
                .mapToInt(phrase -> phrase.split(" ").length)
                .max()
                .orElse(1);
    }

    static Vocabulary all() {
        return ALL;
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    private static List<String> spellings(ResourceBundle bundle, String id) {
        return Stream.of(bundle.getString(id).split("\\|"))
                .map(String::strip)
                .filter(spelling -> !spelling.isEmpty())
                .toList();
    }

    /** How a meaning is written in a language. */
    static String written(String id, Locale locale) {
        return bundle(locale).getString(id).split("\\|")[0].strip();
    }

    /** What a phrase of lower case words may mean; nothing if it is none. */
    Set<String> meanings(String phrase) {
        return meanings.getOrDefault(phrase, Set.of());
    }

    /** Most words that a phrase has. */
    int longest() {
        return longest;
    }

    /** Every spelling there is, as it is written. */
    Set<String> spellings() {
        return spellings;
    }
}
