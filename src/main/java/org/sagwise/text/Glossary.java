package org.sagwise.text;

import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Words of the trade in plain words, in one language. They stand in the bundle {@code glossary}. */
public final class Glossary {

    /** Every entry by its key, in an order in which one explains the next. */
    private static final List<String> IDS = List.of(
            "cell",
            "pack",
            "button",
            "coil",
            "current",
            "volts",
            "amps",
            "ohms",
            "watts",
            "push",
            "ring",
            "side-by-side",
            "row",
            "ideal",
            "rest-volts",
            "nominal",
            "internal-resistance",
            "sag",
            "drop",
            "lead",
            "limit",
            "pulse",
            "capacity",
            "watt-hours",
            "cut-off",
            "married",
            "short",
            "can",
            "wrap",
            "vent",
            "guard",
            "fuse",
            "board",
            "charger",
            "reversed",
            "meter",
            "probe");

    private final Locale locale;
    private final List<Entry> entries;

    /**
     * One word.
     *
     * @param id its key
     * @param term the word as a headline
     * @param text what it means
     * @param forms how it stands in texts
     */
    public record Entry(String id, String term, String text, Pattern forms) {

        /** Whether a text uses it. */
        public boolean isIn(String words) {
            return forms.matcher(words).find();
        }
    }

    private Glossary(Locale locale, List<Entry> entries) {
        this.locale = locale;
        this.entries = entries;
    }

    public static Glossary in(Locale locale) {
        Texts texts = Texts.in("glossary", locale);
        return new Glossary(
                locale,
                IDS.stream()
                        .map(id -> new Entry(
                                id, texts.say(id + ".term"), texts.say(id + ".text"), forms(texts.raw(id + ".forms"))))
                        .toList());
    }

    private static Pattern forms(String forms) {
        List<String> longestFirst = Stream.of(forms.split("\\|"))
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .toList();
        return Pattern.compile(
                "(?<![\\p{L}-])(?:" + String.join("|", longestFirst) + ")(?![\\p{L}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    public static List<String> ids() {
        return IDS;
    }

    /** In an order in which one explains the next. */
    public List<Entry> entries() {
        return entries;
    }

    /** In the order of a dictionary. */
    public List<Entry> alphabetical() {
        Collator collator = Collator.getInstance(locale);
        return entries.stream()
                .sorted((one, other) -> collator.compare(one.term(), other.term()))
                .toList();
    }

    public Optional<Entry> entry(String id) {
        return entries.stream().filter(it -> it.id().equals(id)).findFirst();
    }

    /** The words that a text uses. */
    public List<Entry> usedIn(String text) {
        return entries.stream().filter(it -> it.isIn(text)).toList();
    }

    /** The words that a text uses and none of those before it. */
    public List<Entry> firstUsedIn(String text, List<String> before) {
        List<Entry> fresh = new ArrayList<>(usedIn(text));
        fresh.removeIf(it -> before.stream().anyMatch(it::isIn));
        return fresh;
    }
}
