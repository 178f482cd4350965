package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.text.LocalText;

/** The rules of good teaching that can be checked without solving a circuit. */
final class TeachingRules {

    private static final int MOST_WORDS = 90;
    private static final int MOST_WORDS_IN_SENTENCE = 26;
    private static final int FEWEST_CHECKS = 3;
    private static final int MOST_ALSO = 3;
    private static final int MOST_IN_SAME_PLACE = 3;

    /** Of a reading and of a guess, as a share to either side. */
    private static final double WIDEST = 0.2;

    private static final double WIDEST_GUESS = 0.5;

    /** A number with a unit: a reading, which the engine should say. */
    private static final Pattern NUMBER =
            Pattern.compile("\\d+(?:[.,]\\d+)?[ \u00a0]?(?:mΩ|Ω|mV|V|mA|A|W|Wh|mAh|Ah)(?![\\p{L}\\d])");

    private static final Pattern SENTENCE_END = Pattern.compile("[.!?:](?=\\s|$)|\\n");

    /** Nobody clears a circuit by a lesson. */
    private static final Pattern FORBIDDEN = Pattern.compile(
            "\\b(?:safe|safely|harmless|ungefährlich\\w*|gefahrlos\\w*|harmlos\\w*)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    /** Words by which a title or a goal tells what will come out. */
    private static final Pattern TELLING = Pattern.compile(
            "\\b(?:same|equal(?:ly)?|half|twice|double|more|less|larger|smaller|first|never|always"
                    + "|dasselbe|dieselben?|gleich(?:e|en|er|viel)?|halbe?|doppelte?|mehr|weniger|größer|kleiner"
                    + "|kleinste|zuerst|nie|immer)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    private final List<Finding> findings = new ArrayList<>();
    private final Lesson lesson;

    private TeachingRules(Lesson lesson) {
        this.lesson = lesson;
    }

    static List<Finding> check(Lesson lesson) {
        TeachingRules rules = new TeachingRules(lesson);
        rules.order();
        rules.places();
        rules.names();
        rules.tolerances();
        rules.also();
        rules.texts();
        return rules.findings;
    }

    private void add(String place, LessonProblem problem, String... details) {
        findings.add(Finding.of(place, problem, details));
    }

    private static boolean isCheck(Step step) {
        return step instanceof Step.Choose choose && choose.role() == Step.Role.CHECK;
    }

    private static boolean isPrediction(Step step) {
        return step instanceof Step.Estimate || (step instanceof Step.Choose && !isCheck(step));
    }

    /** Predict first; look back at the end. */
    private void order() {
        boolean predicted = false;
        boolean checked = false;
        int checks = 0;
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            predicted |= isPrediction(step);
            if (step.isObservation() && !predicted) {
                add("steps[" + i + "]", LessonProblem.PREDICT_FIRST);
                predicted = true;
            }
            if (checked && !isCheck(step)) {
                add("steps[" + i + "]", LessonProblem.CHECK_NOT_LAST);
            }
            checked |= isCheck(step);
            checks += isCheck(step) ? 1 : 0;
        }
        if (checks < FEWEST_CHECKS) {
            add("steps", LessonProblem.NO_CHECK, String.valueOf(FEWEST_CHECKS));
        }
        if (lesson.steps().stream().noneMatch(Step.Caution.class::isInstance)) {
            add("steps", LessonProblem.NO_CAUTION);
        }
    }

    /** Who always takes the second answer must not be right. */
    private void places() {
        int last = -1;
        int row = 0;
        for (int i = 0; i < lesson.steps().size(); i++) {
            if (lesson.steps().get(i) instanceof Step.Choose choose) {
                row = choose.right() == last ? row + 1 : 1;
                last = choose.right();
                if (row > MOST_IN_SAME_PLACE) {
                    add("steps[" + i + "].choices", LessonProblem.SAME_PLACE);
                }
            }
        }
    }

    /** Reasons and how sure one is are asked where they matter; asked all the time they are clicked away. */
    private void also() {
        long asked = lesson.steps().stream()
                .filter(it -> it instanceof Step.Choose choose && !choose.also().isEmpty())
                .count();
        if (asked > MOST_ALSO) {
            add("steps", LessonProblem.ALSO_OFTEN, String.valueOf(asked), String.valueOf(MOST_ALSO));
        }
    }

    /** A tolerance that takes in nothing as well as the reading checks nothing. */
    private void tolerances() {
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String place = "steps[" + i + "]";
            if (step instanceof Step.Measure measure && measure.expected() != 0) {
                Bounds range = measure.around(measure.expected());
                if (range.most() - range.least() > WIDEST * 2 * Math.abs(measure.expected())) {
                    add(place + ".within", LessonProblem.WIDE_TOLERANCE, rounded(range.least()), rounded(range.most()));
                }
            } else if (step instanceof Step.Estimate estimate && estimate.share() > WIDEST_GUESS) {
                add(place + ".within", LessonProblem.WIDE_TOLERANCE, "0", "2");
            }
        }
    }

    private static String rounded(double value) {
        return LintReport.rounded(value);
    }

    private void names() {
        lesson.benches().forEach((name, bench) -> {
            for (Part part : bench.scenario().parts()) {
                if (part.kind() != PartKind.CELL && !lesson.names().containsKey(part.id())) {
                    add("benches." + name, LessonProblem.UNNAMED_PART, part.id());
                }
            }
        });
    }

    private void texts() {
        text("title", lesson.title(), true);
        text("goal", lesson.goal(), true);
        telling("title", lesson.title());
        telling("goal", lesson.goal());
        text("note", lesson.note(), true);
        for (int i = 0; i < lesson.steps().size(); i++) {
            for (StepTexts.Said said : StepTexts.of(lesson.steps().get(i))) {
                text("steps[" + i + "]." + said.key(), said.text(), said.invented());
            }
        }
    }

    /** Whoever reads title and goal before the questions must not read the answers. */
    private void telling(String place, LocalText text) {
        text.byLanguage().forEach((code, words) -> {
            Matcher telling = TELLING.matcher(words);
            if (telling.find()) {
                add(place + "." + code, LessonProblem.TELLING_HEAD, telling.group());
            }
        });
    }

    private void text(String place, LocalText text, boolean invented) {
        var english = Filling.blanks(text.english());
        text.byLanguage().forEach((code, words) -> {
            var blanks = Filling.blanks(words);
            if (!blanks.equals(english)) {
                add(place, LessonProblem.DIFFERENT_BLANKS, String.join(", ", english), code, String.join(", ", blanks));
            }
        });
        lesson.languages()
                .forEach(code -> language(place + "." + code, text.in(Locale.forLanguageTag(code)), invented));
    }

    private void language(String place, String text, boolean invented) {
        String bare = Filling.withoutBlanks(text);
        Matcher number = NUMBER.matcher(bare);
        if (!invented && number.find()) {
            add(place, LessonProblem.BARE_NUMBER, number.group());
        }
        Matcher forbidden = FORBIDDEN.matcher(bare);
        if (!invented && forbidden.find()) {
            add(place, LessonProblem.FORBIDDEN_WORD, forbidden.group());
        }
        Locale locale = Locale.forLanguageTag(place.substring(place.lastIndexOf('.') + 1));
        for (String name : ControlWords.unknown(bare, locale)) {
            add(place, LessonProblem.NO_SUCH_CONTROL, name, ControlWords.nearest(name, locale));
        }
        int words = words(bare);
        if (words > MOST_WORDS) {
            add(place, LessonProblem.LONG_TEXT, String.valueOf(words), String.valueOf(MOST_WORDS));
        }
        for (String sentence : SENTENCE_END.split(bare)) {
            if (words(sentence) > MOST_WORDS_IN_SENTENCE) {
                add(
                        place,
                        LessonProblem.LONG_SENTENCE,
                        String.valueOf(words(sentence)),
                        String.valueOf(MOST_WORDS_IN_SENTENCE));
            }
        }
    }

    private static int words(String text) {
        return (int) Pattern.compile("\\s+")
                .splitAsStream(text)
                .filter(word -> word.codePoints().anyMatch(Character::isLetterOrDigit))
                .count();
    }
}
