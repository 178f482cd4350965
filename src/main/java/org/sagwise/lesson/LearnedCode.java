package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One run through a lesson or through the check of ideas in one word, to be sent to who teaches: which answer was
 * given to each question, and nothing about the person. As in {@code learned1.04-side-by-side.bca-y.k7fq2m}.
 *
 * @param lesson the lesson, or {@link #checkOf} a form of the check
 * @param answers a letter for each question: {@code a} to {@code d} for the answer as written, {@code y} and {@code n}
 *     for a number that was met or missed, {@code -} for none
 * @param run three letters by which one run is told from another with the same answers
 * @param shape a letter that stands for the questions: another one means another version of the lesson
 */
public record LearnedCode(String lesson, String answers, String run, String shape) {

    private static final String HEAD = "learned1";
    private static final String LETTERS = "23456789abcdefghjkmnpqrstuvwxyz";
    private static final String NONE = "-";
    private static final Pattern SHAPE = Pattern.compile(HEAD + "\\.([a-z0-9-]{1,60})\\.([a-dyn-]{1,60})\\.([" + LETTERS
            + "]{3})([" + LETTERS + "])([" + LETTERS + "]{2})");

    /** The code of a learner who has come to the end of a lesson. */
    public static LearnedCode of(LessonPlayer player) {
        StringBuilder answers = new StringBuilder();
        for (Verdict verdict : player.summary()) {
            Answers given = player.allAnswers().get(verdict.step());
            boolean chosen = given.choice().isPresent();
            answers.append(
                    chosen
                            ? letter(given.choice().getAsInt())
                            : verdict.said().isEmpty() ? NONE : verdict.met() ? "y" : "n");
        }
        return new LearnedCode(
                name(player.lesson().id()),
                answers.toString(),
                run(player.shuffle().seed()),
                shape(questions(player.lesson())));
    }

    /**
     * The code of a form of the check of ideas.
     *
     * @param answers place of the answer to each question; negative for none
     * @param seed any number
     */
    public static LearnedCode of(IdeasCheck.Form form, List<Integer> answers, long seed) {
        StringBuilder letters = new StringBuilder();
        answers.forEach(place -> letters.append(place < 0 ? NONE : letter(place)));
        return new LearnedCode(checkOf(form), letters.toString(), run(seed), shape(questions(form)));
    }

    /** What stands for a form of the check of ideas where the name of a lesson would stand. */
    public static String checkOf(IdeasCheck.Form form) {
        return "check-" + form.key();
    }

    /** The name of a lesson as codes write it. */
    static String name(String id) {
        return id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "-");
    }

    /** The questions of a lesson, in the order of the letters. */
    static List<Step> questions(Lesson lesson) {
        return lesson.steps().stream().filter(Step::asks).toList();
    }

    /** The questions of a form of the check. */
    static List<Step> questions(IdeasCheck.Form form) {
        return List.copyOf(IdeasCheck.questions(form));
    }

    private static String letter(int place) {
        return String.valueOf((char) ('a' + place));
    }

    /** Whether it was made with these questions. */
    boolean fits(List<Step> questions) {
        if (answers.length() != questions.size() || !shape.equals(shape(questions))) {
            return false;
        }
        for (int i = 0; i < questions.size(); i++) {
            char letter = answers.charAt(i);
            boolean chosen = letter >= 'a' && letter <= 'd';
            boolean fits = questions.get(i) instanceof Step.Choose choose
                    ? letter == '-' || chosen && letter - 'a' < choose.choices().size()
                    : !chosen;
            if (!fits) {
                return false;
            }
        }
        return true;
    }

    /** The answer that was chosen; empty for none. */
    Optional<Choice> choice(int question, Step.Choose choose) {
        int place = answers.charAt(question) - 'a';
        return place >= 0 && place < choose.choices().size()
                ? Optional.of(choose.choices().get(place))
                : Optional.empty();
    }

    private static String run(long seed) {
        return word((seed ^ seed >>> 32) & 0x7FFFFFFF, 3);
    }

    private static String shape(List<Step> questions) {
        List<String> all = new ArrayList<>();
        for (Step question : questions) {
            all.add(question.id());
            if (question instanceof Step.Choose choose) {
                choose.choices().forEach(it -> all.add(it.idea().map(Idea::word).orElse("")));
            }
        }
        return word(sum(String.join("|", all)), 1);
    }

    /** Any one letter that is wrong makes another sum: the factor has no divisor in common with 31 · 31. */
    private static long sum(String text) {
        long sum = 7;
        for (int i = 0; i < text.length(); i++) {
            sum = (sum * 37 + text.charAt(i)) % (31 * 31);
        }
        return sum;
    }

    private static String word(long number, int letters) {
        StringBuilder word = new StringBuilder();
        long rest = number;
        for (int i = 0; i < letters; i++) {
            word.append(LETTERS.charAt((int) (rest % LETTERS.length())));
            rest /= LETTERS.length();
        }
        return word.toString();
    }

    /** The code as it is sent. */
    public String text() {
        String before = before();
        return before + word(sum(before), 2);
    }

    private String before() {
        return HEAD + "." + lesson + "." + answers + "." + run + shape;
    }

    /** Reads a code; empty if a letter of it is wrong. */
    public static Optional<LearnedCode> read(String text) {
        Matcher found = SHAPE.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!found.matches()) {
            return Optional.empty();
        }
        LearnedCode code = new LearnedCode(found.group(1), found.group(2), found.group(3), found.group(4));
        return code.text().endsWith(found.group(5)) ? Optional.of(code) : Optional.empty();
    }
}
