package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which questions of earlier lessons come back when another one begins: first what this learner missed, then what was
 * known and has not been asked for long. What is remembered is asked after twice as many lessons as the time before;
 * what is missed comes back in the next, and before all what was missed by somebody who was sure. That trying to remember teaches, and more so with time in between, is from
 * Roediger and Karpicke 2006, doi 10.1111/j.1467-9280.2006.01693.x; the doubling is a plain choice of ours.
 */
public final class Recall {

    /** How many questions open a lesson. */
    public static final int QUESTIONS = 2;

    private static final int LONGEST_WAIT = 16;

    private Recall() {}

    /**
     * A question of an earlier lesson.
     *
     * @param lesson the lesson
     * @param step place of the question in it
     */
    public record Item(Lesson lesson, int step) {

        public Step.Choose question() {
            return (Step.Choose) lesson.steps().get(step);
        }

        /** Its name in what is kept. */
        public String key() {
            return lesson.id() + "/" + question().id();
        }
    }

    /**
     * When a question was asked last.
     *
     * @param known how often in a row it was answered rightly since
     * @param at how many lessons had been gone through by then
     */
    public record Asked(int known, int at) {

        /** After an answer, when so many lessons have been gone through. */
        public static Asked after(Optional<Asked> before, boolean right, int at) {
            return new Asked(right ? before.map(Asked::known).orElse(0) + 1 : 0, at);
        }

        boolean isDue(int now) {
            return now - at >= (known == 0 ? 1 : Math.min(LONGEST_WAIT, 1 << known));
        }
    }

    private record Rated(Item item, Rank rank, int waited) {}

    /** What comes back sooner stands first. */
    private enum Rank {
        /** Known, but one of its wrong answers is an idea that was missed elsewhere, and surely. */
        FIRM,
        /** The very question that was missed by somebody who was sure. */
        FIRM_ITSELF,
        /** Lost when it came back, or touching an idea that was missed elsewhere. */
        LOST,
        MISSED,
        /** Right, but guessed. */
        GUESSED,
        KNOWN,
        FRESH
    }

    /**
     * The questions that open a lesson, at most {@link #QUESTIONS}.
     *
     * @param taught all lessons in the order in which they are taught
     * @param given what the learner has done in each step of each lesson, by the lesson's name
     * @param asked what came back before, by {@link Item#key()}
     * @param next the lesson that begins; nothing of it is asked
     */
    public static List<Item> choose(
            List<Lesson> taught, Map<String, List<Answers>> given, Map<String, Asked> asked, Lesson next) {
        List<Lesson> gone = gone(taught, given, next);
        int now = gone.size();
        Set<Idea> missed = missed(gone, given);
        Set<Idea> firm = missed(gone, given, Recall::isSure);
        List<Rated> rated = new ArrayList<>();
        for (int i = 0; i < gone.size(); i++) {
            Lesson lesson = gone.get(i);
            for (int step = 0; step < lesson.steps().size(); step++) {
                if (lesson.steps().get(step) instanceof Step.Choose) {
                    Item item = new Item(lesson, step);
                    Answers answers = given.get(lesson.id()).get(step);
                    rate(item, answers, Optional.ofNullable(asked.get(item.key())), missed, firm, now, i)
                            .ifPresent(rated::add);
                }
            }
        }
        rated.sort(Comparator.comparing(Rated::rank)
                .thenComparing(Comparator.comparingInt(Rated::waited).reversed()));
        return spread(rated);
    }

    /** Lessons in which something was answered, without the one that begins. */
    private static List<Lesson> gone(List<Lesson> taught, Map<String, List<Answers>> given, Lesson next) {
        return taught.stream()
                .filter(lesson -> !lesson.id().equals(next.id()))
                .filter(lesson -> given.getOrDefault(lesson.id(), List.of()).size()
                        == lesson.steps().size())
                .filter(lesson -> given.get(lesson.id()).stream()
                        .anyMatch(answers -> answers.choice().isPresent()))
                .toList();
    }

    /** Ideas that this learner's wrong answers stand for. */
    public static Set<Idea> missed(List<Lesson> lessons, Map<String, List<Answers>> given) {
        return missed(lessons, given, answers -> true);
    }

    private static boolean isSure(Answers answers) {
        return answers.sureness().filter(Sureness.SURE::equals).isPresent();
    }

    private static Set<Idea> missed(
            List<Lesson> lessons, Map<String, List<Answers>> given, Predicate<Answers> counted) {
        Set<Idea> ideas = new HashSet<>();
        for (Lesson lesson : lessons) {
            List<Answers> answers = given.getOrDefault(lesson.id(), List.of());
            for (int i = 0; i < Math.min(answers.size(), lesson.steps().size()); i++) {
                if (lesson.steps().get(i) instanceof Step.Choose choose
                        && answers.get(i).choice().isPresent()
                        && counted.test(answers.get(i))) {
                    choose.choices()
                            .get(answers.get(i).choice().getAsInt())
                            .idea()
                            .ifPresent(ideas::add);
                }
            }
        }
        ideas.remove(Idea.SLIP);
        return ideas;
    }

    /** How soon it is asked; empty for what is not due. */
    private static Optional<Rated> rate(
            Item item, Answers answers, Optional<Asked> asked, Set<Idea> missed, Set<Idea> firm, int now, int place) {
        if (asked.isPresent()) {
            boolean lost = asked.get().known() == 0;
            return asked.get().isDue(now)
                    ? Optional.of(new Rated(
                            item,
                            lost ? Rank.LOST : Rank.KNOWN,
                            now - asked.get().at()))
                    : Optional.empty();
        }
        if (answers.choice().isEmpty()) {
            return Optional.empty();
        }
        Rank rank = rank(item, answers, missed, firm);
        return Optional.of(new Rated(item, rank, now - place));
    }

    /** A missed idea is asked in another form before the same question comes again. */
    private static Rank rank(Item item, Answers answers, Set<Idea> missed, Set<Idea> firm) {
        boolean right = answers.choice().getAsInt() == item.question().right();
        if (!right) {
            return isSure(answers) ? Rank.FIRM_ITSELF : Rank.MISSED;
        }
        if (touches(item, firm)) {
            return Rank.FIRM;
        }
        if (touches(item, missed)) {
            return Rank.LOST;
        }
        boolean guessed = answers.sureness().filter(Sureness.GUESS::equals).isPresent();
        return guessed ? Rank.GUESSED : Rank.FRESH;
    }

    private static boolean touches(Item item, Set<Idea> ideas) {
        return item.question().choices().stream()
                .flatMap(it -> it.idea().stream())
                .anyMatch(ideas::contains);
    }

    /** Of one lesson only one, as long as there are others. */
    private static List<Item> spread(List<Rated> rated) {
        Map<String, Item> perLesson = new HashMap<>();
        List<Item> chosen = new ArrayList<>();
        for (Rated each : rated) {
            if (chosen.size() < QUESTIONS
                    && perLesson.putIfAbsent(each.item().lesson().id(), each.item()) == null) {
                chosen.add(each.item());
            }
        }
        rated.stream()
                .map(Rated::item)
                .filter(item -> !chosen.contains(item))
                .limit(QUESTIONS - chosen.size())
                .forEach(chosen::add);
        return List.copyOf(chosen);
    }

    /** How many lessons have been gone through: the time by which questions wait. */
    public static int lessonsGone(List<Lesson> taught, Map<String, List<Answers>> given, Lesson next) {
        return gone(taught, given, next).size();
    }

    /** The prediction of a lesson that this idea loses: where the bench shows what is so. */
    public static Optional<Item> shownAt(Idea idea, List<Lesson> taught) {
        for (Lesson lesson : taught) {
            for (int i = 0; i < lesson.steps().size(); i++) {
                if (lesson.steps().get(i) instanceof Step.Choose choose
                        && choose.predicts()
                        && choose.choices().stream()
                                .anyMatch(it -> it.idea().filter(idea::equals).isPresent())) {
                    return Optional.of(new Item(lesson, i));
                }
            }
        }
        return Optional.empty();
    }
}
