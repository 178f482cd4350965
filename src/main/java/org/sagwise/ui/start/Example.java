package org.sagwise.ui.start;

import java.util.Locale;
import org.sagwise.scenario.Scenario;

/**
 * A bench that comes with the program, to try: the same circuit with its words in each language.
 *
 * @param name its file's name without the ending
 * @param english the bench in English
 * @param german the bench in German
 */
public record Example(String name, Scenario english, Scenario german) {

    /** The bench with its words in a language; English where there are none in that language. */
    public Scenario scenario(Locale locale) {
        return locale.getLanguage().equals(Locale.GERMAN.getLanguage()) ? german : english;
    }

    /** Whether this is the bench, in whatever language. */
    boolean is(Scenario scenario) {
        return english.equals(scenario) || german.equals(scenario);
    }
}
