package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Finding;
import org.sagwise.text.LocalText;

/**
 * Answers of a question must not tell by their form which of them is right: not by digits, not by length, not by
 * having a reason while others have none. What is said to who chose one must say something.
 */
final class OptionRules {

    /** A number with a unit that wrong answers make up. */
    private static final Pattern NUMBER =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)[ \u00a0](mΩ|Ω|mV|V|mA|A|mW|W|Wh|mAh|Ah|°C)(?![\\p{L}\\d])");

    private static final Map<String, Unit> UNITS = Map.of(
            "Ω", Unit.OHM,
            "V", Unit.VOLT,
            "A", Unit.AMPERE,
            "W", Unit.WATT,
            "Wh", Unit.WATT_HOUR,
            "Ah", Unit.AMPERE_HOUR,
            "°C", Unit.CELSIUS);

    /** What sets a reason off from the answer. */
    private static final Pattern REASON = Pattern.compile("[,;:](?=\\s)|\\b(?:because|since|weil|denn)\\b");

    /** About as long as the engine prints a reading. */
    private static final String READING = "0.00 A";

    private static final double SHORT = 0.6;
    private static final double LONG = 1.6;
    private static final int SEEN = 10;
    private static final int FEWEST_QUESTIONS = 4;
    private static final int FEWEST_WORDS_TO_WRONG = 5;
    private static final int FEWEST_WORDS_TO_RIGHT = 3;

    private final List<Finding> findings = new ArrayList<>();

    private final Set<String> languages;

    private OptionRules(Set<String> languages) {
        this.languages = languages;
    }

    static List<Finding> check(Lesson lesson) {
        OptionRules rules = new OptionRules(lesson.languages());
        for (int i = 0; i < lesson.steps().size(); i++) {
            if (lesson.steps().get(i) instanceof Step.Choose choose) {
                rules.question("steps[" + i + "].choices", choose);
                rules.why("steps[" + i + "].also", choose);
            }
        }
        rules.lengths(lesson);
        return rules.findings;
    }

    private void add(String place, LessonProblem problem, String... details) {
        findings.add(Finding.of(place, problem, details));
    }

    private void question(String place, Step.Choose choose) {
        for (String code : languages) {
            Locale locale = Locale.forLanguageTag(code);
            List<String> texts = choose.choices().stream()
                    .map(choice -> choice.text().in(locale))
                    .toList();
            reasons(place, code, texts);
            equals(place, code, texts);
            if (sticksOut(texts, choose.right())) {
                add(place, LessonProblem.OPTION_LENGTH, code);
            }
            for (int i = 0; i < texts.size(); i++) {
                digits(place + "[" + i + "].text." + code, texts.get(i), locale);
            }
        }
        for (int i = 0; i < choose.choices().size(); i++) {
            reply(place + "[" + i + "].reply", choose.choices().get(i));
        }
    }

    /** Made-up numbers look like those that the engine prints. */
    private void digits(String place, String text, Locale locale) {
        Matcher number = NUMBER.matcher(Filling.withoutBlanks(text));
        while (number.find()) {
            double value = Double.parseDouble(number.group(1).replace(',', '.'));
            String printed = printed(value, number.group(2), locale);
            if (!printed.replace('\u00a0', ' ').equals(number.group().replace('\u00a0', ' '))) {
                add(place, LessonProblem.OPTION_DIGITS, number.group(), printed);
            }
        }
    }

    private static String printed(double value, String sign, Locale locale) {
        boolean thousandth = sign.startsWith("m");
        Unit unit = UNITS.get(thousandth ? sign.substring(1) : sign);
        return QuantityFormat.forPeople(locale).print(thousandth ? value / 1000 : value, unit);
    }

    private void reasons(String place, String code, List<String> texts) {
        long with = texts.stream()
                .filter(text -> REASON.matcher(Filling.withoutBlanks(text)).find())
                .count();
        if (with > 0 && with < texts.size()) {
            add(place, LessonProblem.OPTION_REASON, code);
        }
    }

    /** Who asks for a reason does not hand one out with every answer. */
    private void why(String place, Step.Choose choose) {
        boolean given = choose.choices().stream()
                .allMatch(it -> REASON.matcher(Filling.withoutBlanks(it.text().english()))
                        .find());
        if (given && choose.also().contains(Step.Also.WHY)) {
            add(place, LessonProblem.WHY_GIVEN);
        }
    }

    private void equals(String place, String code, List<String> texts) {
        Set<String> seen = new HashSet<>();
        for (String text : texts) {
            if (!seen.add(text.strip().toLowerCase(Locale.forLanguageTag(code)))) {
                add(place, LessonProblem.EQUAL_OPTIONS, text);
            }
        }
    }

    private static int length(String text) {
        return text.replaceAll("\\{[^{}]*\\}", READING).length();
    }

    private static boolean sticksOut(List<String> texts, int right) {
        int own = length(texts.get(right));
        List<Integer> others = others(texts, right);
        double mean = others.stream().mapToInt(it -> it).average().orElse(own);
        boolean seen = Math.abs(own - mean) >= SEEN;
        boolean shortest = others.stream().allMatch(it -> own < it) && own < SHORT * mean;
        boolean longest = others.stream().allMatch(it -> own > it) && own > LONG * mean;
        return seen && (shortest || longest);
    }

    private static List<Integer> others(List<String> texts, int right) {
        List<Integer> lengths =
                new ArrayList<>(texts.stream().map(OptionRules::length).toList());
        lengths.remove(right);
        return lengths;
    }

    /** Over a whole lesson, who always takes the shortest or the longest answer must not be right. */
    private void lengths(Lesson lesson) {
        List<Step.Choose> questions = lesson.steps().stream()
                .filter(Step.Choose.class::isInstance)
                .map(Step.Choose.class::cast)
                .toList();
        for (String code : languages) {
            Locale locale = Locale.forLanguageTag(code);
            long shortest =
                    questions.stream().filter(it -> rank(it, locale, -1)).count();
            long longest = questions.stream().filter(it -> rank(it, locale, 1)).count();
            long most = Math.max(shortest, longest);
            if (questions.size() >= FEWEST_QUESTIONS && 2 * most > questions.size() + 1) {
                add(
                        "steps",
                        shortest > longest ? LessonProblem.ALWAYS_SHORTEST : LessonProblem.ALWAYS_LONGEST,
                        String.valueOf(most),
                        String.valueOf(questions.size()),
                        code);
            }
        }
    }

    private static boolean rank(Step.Choose question, Locale locale, int sign) {
        List<String> texts =
                question.choices().stream().map(it -> it.text().in(locale)).toList();
        int own = sign * length(texts.get(question.right()));
        return others(texts, question.right()).stream().allMatch(it -> own > sign * it);
    }

    private void reply(String place, Choice choice) {
        int least = choice.isRight() ? FEWEST_WORDS_TO_RIGHT : FEWEST_WORDS_TO_WRONG;
        LocalText reply = choice.reply();
        reply.byLanguage().forEach((code, words) -> {
            if (words.split("\\s+").length < least) {
                add(place + "." + code, LessonProblem.THIN_REPLY, words);
            }
        });
    }
}
