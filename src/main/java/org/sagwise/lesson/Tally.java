package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How a class voted on one question: counts and nothing else, no names.
 *
 * @param counts hands raised for each answer
 */
public record Tally(List<Integer> counts) {

    /** Fewer right than this: teach it again (rule of thumb of peer teaching, from memory). */
    private static final double FEW = 0.30;

    /** More right than this: explain and go on (rule of thumb of peer teaching, from memory). */
    private static final double MANY = 0.70;

    /** What a vote suggests to do next. */
    public enum Advice {
        COUNT_FIRST,
        TEACH_AGAIN,
        TALK_AND_VOTE_AGAIN,
        EXPLAIN_AND_GO_ON
    }

    public Tally {
        counts = List.copyOf(counts);
        if (counts.stream().anyMatch(count -> count < 0 || count > 999)) {
            throw new IllegalArgumentException("hands are counted from 0 to 999: " + counts);
        }
    }

    public static Tally of(Step.Choose question) {
        return new Tally(Collections.nCopies(question.choices().size(), 0));
    }

    public Tally with(int place, int count) {
        List<Integer> changed = new ArrayList<>(counts);
        changed.set(place, count);
        return new Tally(changed);
    }

    public int total() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    /** Share of all votes that one answer has; 0 without votes. */
    public double share(int place) {
        return total() == 0 ? 0 : (double) counts.get(place) / total();
    }

    /** What to do next, by the share of the right answer. */
    public Advice advice(int right) {
        if (total() == 0) {
            return Advice.COUNT_FIRST;
        }
        if (share(right) < FEW) {
            return Advice.TEACH_AGAIN;
        }
        return share(right) <= MANY ? Advice.TALK_AND_VOTE_AGAIN : Advice.EXPLAIN_AND_GO_ON;
    }
}
