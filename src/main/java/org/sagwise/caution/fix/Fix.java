package org.sagwise.caution.fix;

import org.sagwise.caution.CautionTexts;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Texts;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;

/** An edit that cures something, with a name such as "Turn cell B". */
public final class Fix {

    private final String key;
    private final List<Object> words;
    private final Set<String> changed;
    private final UnaryOperator<Scenario> edit;

    /**
     * @param key of its name in the bundle {@code fixes}
     * @param words what the name says: lists of parts, {@link Quantity} and texts
     * @param changed ids of parts and links that it changes
     * @param edit what it does
     */
    Fix(String key, List<Object> words, Set<String> changed, UnaryOperator<Scenario> edit) {
        this.key = key;
        this.words = List.copyOf(words);
        this.changed = Set.copyOf(changed);
        this.edit = edit;
    }

    /**
     * A number in a name.
     *
     * @param value in the unit
     * @param unit its unit
     */
    record Quantity(double value, Unit unit) {}

    /** What kind of cure it is, as in {@code turn}: for tests and programs. */
    public String key() {
        return key;
    }

    /** What it does, as a command: "Turn cell B". */
    public String name(Locale locale) {
        Object[] said = words.stream().map(word -> said(word, locale)).toArray();
        return Texts.in("fixes", locale).say(key, said);
    }

    /** Ids of the parts and links that it changes. */
    public Set<String> changed() {
        return changed;
    }

    /** The scenario with the edit made; the scenario must be the one for which it was offered. */
    public Scenario apply(Scenario scenario) {
        return edit.apply(scenario);
    }

    private static Object said(Object word, Locale locale) {
        if (word instanceof Quantity quantity) {
            return QuantityFormat.forPeople(locale).print(quantity.value(), quantity.unit());
        }
        if (word instanceof List<?> parts) {
            return CautionTexts.names(parts.stream().map(Part.class::cast).toList(), locale);
        }
        return word;
    }
}
