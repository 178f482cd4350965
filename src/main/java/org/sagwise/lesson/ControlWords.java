package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.sagwise.part.NearMiss;

/** The words that stand on controls of the window, and where a lesson names one. */
final class ControlWords {

    private static final List<String> BUNDLES = List.of("ui", "kinds", "window", "picture");

    /** What stands in italics behind a word that tells somebody to use a control. */
    private static final Pattern NAMED = Pattern.compile(
            "(?:\\b(?:press|choose|set|setze|its|ihre|ihren|seinen|pick|click|turn on|join by|joins? (?:them )?by|with the|at|call(?:ed)?"
                    + "|drücke|drück|wähle|klicke|klicke auf|schalte|verbinde mit|mit|bei|unter|auf|oder|or|then"
                    + "|dann)|[,:])\\s+\\*([\\p{Lu}][^*.?!:]*)\\*",
            Pattern.CASE_INSENSITIVE);

    private static final Map<Locale, Set<String>> KNOWN = new ConcurrentHashMap<>();

    private ControlWords() {}

    /** Controls that a text names and that the window does not have in this language. */
    static List<String> unknown(String text, Locale locale) {
        return NAMED.matcher(text)
                .results()
                .map(found -> found.group(1))
                .filter(name -> Character.isUpperCase(name.charAt(0)))
                .filter(name -> !known(locale).contains(bare(name)))
                .toList();
    }

    /** The control whose word is nearest. */
    static String nearest(String name, Locale locale) {
        return NearMiss.of(bare(name), known(locale)).stream().findFirst().orElse("");
    }

    /** Every word of the window in a language. */
    static Set<String> known(Locale locale) {
        return KNOWN.computeIfAbsent(
                locale,
                language -> BUNDLES.stream()
                        .map(name -> ResourceBundle.getBundle("org.sagwise.texts." + name, language))
                        .flatMap(bundle -> bundle.keySet().stream().map(bundle::getString))
                        .map(ControlWords::bare)
                        .filter(word -> word.length() <= 40)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    /** As it stands on a button: without the dots of one that asks more, and without a key's mark. */
    private static String bare(String word) {
        Matcher dots = Pattern.compile("\\s*(?:…|\\([^)]*\\))$").matcher(word);
        return dots.replaceFirst("").replace("_", "").strip();
    }
}
