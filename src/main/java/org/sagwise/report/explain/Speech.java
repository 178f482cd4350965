package org.sagwise.report.explain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.KeyNumbers;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;
import org.sagwise.text.Template;
import org.sagwise.text.Texts;

/**
 * Words and numbers of an explanation in one language.
 *
 * @param texts sentences
 * @param format how quantities are printed
 * @param scenario whose parts are named
 */
record Speech(Texts texts, QuantityFormat format, Scenario scenario) {

    static Speech of(Scenario scenario, Locale locale, Signs signs) {
        return new Speech(Texts.in("report", locale), new QuantityFormat(locale, signs), scenario);
    }

    Locale locale() {
        return texts.locale();
    }

    String say(String key, Object... words) {
        return texts.say(key, words);
    }

    boolean has(String key) {
        return texts.has(key);
    }

    /** What stands under a key, with the values of a part under the names of its keys. */
    String told(String key, EffectiveKeys values) {
        return Template.fill(texts.raw(key), name -> Optional.of(print(name, values.need(name))), "");
    }

    private String print(String key, double written) {
        Measure measure = KeyNumbers.measure(key);
        return format.print(measure.scale().toUnit(written), measure.unit());
    }

    String print(double value, Unit unit) {
        return format.print(value, unit);
    }

    /** A length that a file gives in millimetres. */
    String millimetres(double mm) {
        return format.print(mm / 1000, Unit.METRE.scale("mm"), Digits.atMostSignificant(3));
    }

    /** A resistance that a file gives in milliohms. */
    String milliohms(double mohm) {
        return format.print(mohm / 1000, Unit.OHM);
    }

    /** What a part is called in a sentence. */
    String name(String id) {
        return scenario.part(id).map(part -> Names.in(locale()).part(part)).orElse(id);
    }

    /** A note in one line. Ends of lines are named one by one: the regular expressions of a live page know no {@code \\R}. */
    String note(Note note) {
        return note.text().strip().replaceAll("\\s*[\\n-\\r\\u0085\\u2028\\u2029]\\s*", " / ");
    }

    String names(List<Part> parts) {
        return Names.in(locale()).parts(parts);
    }

    /** A sentence with a capital letter in front. */
    String sentence(String text) {
        return Names.capital(text, locale());
    }
}
