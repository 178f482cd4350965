package org.sagwise.picture.scene;

import java.util.Locale;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.text.Texts;

/**
 * Words and numbers in the language of a scene.
 *
 * @param texts words
 * @param numbers how quantities are printed
 */
public record Figures(Texts texts, QuantityFormat numbers) {

    public static Figures of(BenchScene scene) {
        return in(scene.locale());
    }

    public static Figures in(Locale locale) {
        return new Figures(Texts.in("picture", locale), QuantityFormat.forPeople(locale));
    }

    public String print(double value, Unit unit) {
        return numbers.print(value, unit);
    }

    /** What a part is called on the bench. */
    public String label(Part part) {
        return Names.in(texts.locale()).label(part);
    }

    /** A sentence around one quantity. */
    public String say(String key, double value, Unit unit) {
        return texts.say(key, print(value, unit));
    }
}
