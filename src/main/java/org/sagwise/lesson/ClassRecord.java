package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a class has met and missed, counted from the codes that its learners sent. Counts and nothing else; a run that
 * was sent twice counts once.
 *
 * @param codes the codes that count, in the order in which they were found
 * @param lessons what was met and missed, lesson by lesson, in the order in which they are taught
 * @param troubles what is wrong with the other codes
 */
public record ClassRecord(List<LearnedCode> codes, List<OfLesson> lessons, List<Trouble> troubles) {

    /** Whatever is meant as a code, whole or not. */
    private static final Pattern MEANT = Pattern.compile("learned\\d*\\.[\\w.-]*\\w", Pattern.CASE_INSENSITIVE);

    /** Why a code does not count. */
    public enum Why {
        /** Letters are wrong or missing. */
        MISTYPED,
        /** No lesson of this name is known here. */
        UNKNOWN_LESSON,
        /** The lesson has other questions here. */
        OTHER_VERSION,
        /** It stands there more than once. */
        TWICE
    }

    /**
     * A code that does not count.
     *
     * @param text what was pasted
     */
    public record Trouble(String text, Why why) {}

    /**
     * How many learners met an idea, and how many missed it: chose an answer behind which it stands.
     */
    public record Count(Idea idea, int met, int missed) {}

    /**
     * What learners made of one lesson.
     *
     * @param learners how many have sent a code
     * @param ideas the mistaken ideas that its questions look for, the one most often missed first
     */
    public record OfLesson(Lesson lesson, int learners, List<Count> ideas) {
        public OfLesson {
            ideas = List.copyOf(ideas);
        }
    }

    public ClassRecord {
        codes = List.copyOf(codes);
        lessons = List.copyOf(lessons);
        troubles = List.copyOf(troubles);
    }

    /**
     * Counts every code in a text, whatever stands between them.
     *
     * @param known the lessons that codes may be of, in the order in which they are taught
     */
    public static ClassRecord of(String text, List<Lesson> known) {
        Map<String, List<Step>> questions = new LinkedHashMap<>();
        known.forEach(lesson -> questions.putIfAbsent(LearnedCode.name(lesson.id()), LearnedCode.questions(lesson)));
        for (IdeasCheck.Form form : IdeasCheck.Form.values()) {
            questions.put(LearnedCode.checkOf(form), LearnedCode.questions(form));
        }
        Set<LearnedCode> codes = new LinkedHashSet<>();
        List<Trouble> troubles = new ArrayList<>();
        for (String word : MEANT.matcher(text).results().map(MatchResult::group).toList()) {
            Optional<LearnedCode> code = LearnedCode.read(word);
            Optional<Why> why = code.isEmpty()
                    ? Optional.of(Why.MISTYPED)
                    : !questions.containsKey(code.get().lesson())
                            ? Optional.of(Why.UNKNOWN_LESSON)
                            : !code.get().fits(questions.get(code.get().lesson()))
                                    ? Optional.of(Why.OTHER_VERSION)
                                    : codes.add(code.get()) ? Optional.empty() : Optional.of(Why.TWICE);
            why.ifPresent(it -> troubles.add(new Trouble(word, it)));
        }
        List<OfLesson> lessons = new ArrayList<>();
        for (Lesson lesson : known) {
            String name = LearnedCode.name(lesson.id());
            List<LearnedCode> its =
                    codes.stream().filter(code -> code.lesson().equals(name)).toList();
            if (!its.isEmpty()) {
                lessons.add(new OfLesson(lesson, its.size(), counts(LearnedCode.questions(lesson), its)));
            }
        }
        return new ClassRecord(List.copyOf(codes), lessons, troubles);
    }

    private static List<Count> counts(List<Step> questions, List<LearnedCode> codes) {
        Map<Idea, int[]> counts = new LinkedHashMap<>();
        for (LearnedCode code : codes) {
            Set<Idea> met = new HashSet<>();
            Set<Idea> missed = new HashSet<>();
            for (int i = 0; i < questions.size(); i++) {
                if (questions.get(i) instanceof Step.Choose choose) {
                    Optional<Choice> said = code.choice(i, choose);
                    said.flatMap(Choice::idea).ifPresent(missed::add);
                    if (said.filter(Choice::isRight).isPresent()) {
                        choose.choices().forEach(it -> it.idea().ifPresent(met::add));
                    }
                }
            }
            met.removeAll(missed);
            met.forEach(idea -> counts.computeIfAbsent(idea, key -> new int[2])[0]++);
            missed.forEach(idea -> counts.computeIfAbsent(idea, key -> new int[2])[1]++);
        }
        counts.remove(Idea.SLIP);
        return counts.entrySet().stream()
                .map(entry -> new Count(entry.getKey(), entry.getValue()[0], entry.getValue()[1]))
                .sorted((one, other) -> other.missed() != one.missed()
                        ? other.missed() - one.missed()
                        : one.idea().compareTo(other.idea()))
                .toList();
    }

    /** How many have sent a form of the check of ideas. */
    public int learners(IdeasCheck.Form form) {
        return (int) of(form).count();
    }

    /** How many of them were right, by objective. */
    public List<Integer> right(IdeasCheck.Form form) {
        List<Step> questions = LearnedCode.questions(form);
        Integer[] right = new Integer[questions.size()];
        Arrays.fill(right, 0);
        of(form).forEach(code -> {
            for (int i = 0; i < right.length; i++) {
                right[i] += code.choice(i, (Step.Choose) questions.get(i))
                                .filter(Choice::isRight)
                                .isPresent()
                        ? 1
                        : 0;
            }
        });
        return List.of(right);
    }

    private Stream<LearnedCode> of(IdeasCheck.Form form) {
        return codes.stream().filter(code -> code.lesson().equals(LearnedCode.checkOf(form)));
    }

    /** The codes that count, one a line: to be kept, and to be pasted again. */
    public String text() {
        return String.join("\n", codes.stream().map(LearnedCode::text).toList()).toLowerCase(Locale.ROOT);
    }
}
