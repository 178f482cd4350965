package org.sagwise.hazard;

import java.util.List;
import java.util.Locale;
import org.sagwise.text.Texts;

/**
 * What the program says about the real world, apart from any drawn circuit: that it is a teaching
 * model, who comes first, and safety messages by ANSI Z535.6 (hazard, consequence, avoidance).
 */
public final class Notices {

    private static final String BUNDLE = "notices";

    private static final List<String> MESSAGES = List.of(
            "loose-cells",
            "short",
            "reversed",
            "over-current",
            "mixed",
            "damaged-cell",
            "charging",
            "cut-off",
            "meter",
            "hot-parts");

    private Notices() {}

    /**
     * A safety message about the real world.
     *
     * @param id what it is about, as in {@code short}
     * @param signal signal word in the reader's language
     * @param title a few words
     * @param text hazard, consequence and avoidance in at most 40 words
     */
    public record Message(String id, String signal, String title, String text) {}

    /** That this is a teaching model and who comes first, in one line. */
    public static String modelLine(Locale locale) {
        return say("model.line", locale);
    }

    /** The same at length. */
    public static String model(Locale locale) {
        return say("model.long", locale);
    }

    /** The message that greets everybody once: what is at stake, and what not to do. */
    public static Message firstStart(Locale locale) {
        String text = String.join(
                " ",
                say("first-start.hazard", locale),
                say("first-start.consequence", locale),
                say("first-start.avoidance", locale));
        return new Message("first-start", say("first-start.signal", locale), say("first-start.title", locale), text);
    }

    /** One line for every picture and post. */
    public static String exportLine(Locale locale) {
        return say("export.line", locale);
    }

    /** The same at length, where there is room. */
    public static String export(Locale locale) {
        return say("export.long", locale);
    }

    /** Every safety message, the one that concerns most people first. */
    public static List<Message> messages(Locale locale) {
        return MESSAGES.stream().map(id -> message(id, locale)).toList();
    }

    private static Message message(String id, Locale locale) {
        String key = "safety." + id;
        return new Message(id, say(key + ".signal", locale), say(key + ".title", locale), say(key + ".text", locale));
    }

    private static String say(String key, Locale locale) {
        return Texts.in(BUNDLE, locale).say(key);
    }
}
