package org.sagwise.ui.start;

import java.util.Locale;
import java.util.Map;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Languages;

/**
 * A bench that comes with the program, to try: the same circuit with its words in each language.
 *
 * @param name its file's name without the ending
 * @param byLanguage the bench by the code of the language of its words
 */
public record Example(String name, Map<String, Scenario> byLanguage) {

    /** The bench with its words in a language; English where there are none in that language. */
    public Scenario scenario(Locale locale) {
        return byLanguage.getOrDefault(locale.getLanguage(), byLanguage.get(Languages.ENGLISH));
    }

    /** Whether this is the bench, in whatever language. */
    boolean is(Scenario scenario) {
        return byLanguage.containsValue(scenario);
    }
}
