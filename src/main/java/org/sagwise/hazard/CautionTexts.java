package org.sagwise.hazard;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.text.Template;
import org.sagwise.text.Texts;

/** Says cautions in the reader's language, numbers as that language writes them. */
public final class CautionTexts {

    private CautionTexts() {}

    /** A few words that name the hazard. */
    public static String title(Caution caution, Locale locale) {
        return say(caution, "title", locale);
    }

    /** What is wrong and why it matters, with the numbers. */
    public static String text(Caution caution, Locale locale) {
        return say(caution, "text", locale);
    }

    /** What a competent person would do. */
    public static String advice(Caution caution, Locale locale) {
        return say(caution, "advice", locale);
    }

    /** The signal word. */
    public static String signal(Signal signal, Locale locale) {
        return texts(locale).raw("signal." + signal);
    }

    private static String say(Caution caution, String what, Locale locale) {
        Texts texts = texts(locale);
        String variant = caution.id() + "." + caution.details().get(CautionBuilder.VARIANT);
        String own = variant + "." + what;
        String regulated = caution.id() + "." + CautionBuilder.REGULATED + "." + what;
        String usual = texts.has(own) ? own : caution.id() + "." + what;
        String key =
                caution.details().containsKey(CautionBuilder.REGULATED) && texts.has(regulated) ? regulated : usual;
        DetailWords words = new DetailWords(texts, QuantityFormat.forPeople(locale));
        return Template.fill(texts.raw(key), name -> value(caution, name, words), words.unknown());
    }

    private static Optional<String> value(Caution caution, String name, DetailWords words) {
        return switch (name) {
            case "measured" -> words.number(caution.measured(), caution.unit());
            case "limit" -> words.number(caution.limit(), caution.unit());
            case "when" ->
                Optional.of(words.when(
                        caution.details().containsKey(CautionBuilder.WITHOUT_BUTTON)
                                ? "JOINED"
                                : caution.when().name()));
            case "how" ->
                Optional.of(words.texts().raw("how." + caution.details().get("how")));
            default -> words.say(name, caution.details().get(name));
        };
    }

    private static Texts texts(Locale locale) {
        return Texts.in("cautions", locale);
    }
}
