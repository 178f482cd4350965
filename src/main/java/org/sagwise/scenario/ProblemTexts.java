package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.quantity.Measure;
import org.sagwise.text.Texts;

/** Says what is wrong with a scenario in a sentence, and what would be right. */
public final class ProblemTexts {

    private static final int LONGEST_SHOWN = 400;
    private static final int LONGEST_WORD = 60;

    private ProblemTexts() {}

    static String sentence(Problem problem, String place, List<String> given, Locale locale) {
        Texts texts = Texts.in(problem.bundle(), locale);
        String key = problem.key();
        List<String> details = given.stream().map(ProblemTexts::shown).toList();
        return switch (problem) {
            case UNKNOWN_KEY,
                    UNKNOWN_KIND,
                    UNKNOWN_MODEL,
                    UNKNOWN_ALLOY,
                    UNKNOWN_PART,
                    NOTE_ON_NOTHING,
                    PLACEMENT_OF_NOTHING -> texts.say(hinted(key, details), details.toArray());
            case OUT_OF_RANGE, NOT_WHOLE -> range(problem, place, details, texts);
            case NOT_JSON -> texts.say(key + "." + details.get(0), details.get(1));
            case MISSING_KEY -> texts.say(key, details.get(0), type(details.get(1), texts));
            case WRONG_TYPE -> texts.say(key, type(details.get(0), texts), type(details.get(1), texts));
            case NOT_AN_OBJECT -> texts.say(key, type(details.get(0), texts));
            default -> texts.say(key, details.toArray());
        };
    }

    /** Whether a nearest known word can be offered decides between two sentences. */
    private static String hinted(String key, List<String> details) {
        return details.get(1).isEmpty() ? key + ".no-hint" : key;
    }

    private static String range(Problem problem, String place, List<String> details, Texts texts) {
        String name = place.substring(place.lastIndexOf('.') + 1);
        String unit = Measure.ofKey(name)
                .map(measure -> " " + measure.scale().symbol())
                .orElse("");
        List<String> words = new ArrayList<>();
        details.subList(0, 3).forEach(number -> words.add(number + unit));
        String variant = problem == Problem.OUT_OF_RANGE && details.get(3).equals("above") ? ".above" : "";
        return texts.say(problem.key() + variant, words.toArray());
    }

    private static String type(String word, Texts texts) {
        return texts.say("type." + word);
    }

    /** Something from a file as it may be shown: no control characters, and no endless text. */
    public static String shown(String text) {
        String clean = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\\u2028\\u2029]", "\ufffd");
        int longest = text.contains(", ") ? LONGEST_SHOWN : LONGEST_WORD;
        return clean.codePointCount(0, clean.length()) <= longest
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, longest)) + "…";
    }
}
