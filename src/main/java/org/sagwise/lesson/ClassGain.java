package org.sagwise.lesson;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a class got right before and after, by objective.
 *
 * @param learnersBefore how many took the form before
 * @param learnersAfter how many took the one after
 * @param before how many were right before, by objective; {@link #UNCOUNTED} where nobody counted them
 * @param after how many were right after, likewise
 */
public record ClassGain(int learnersBefore, int learnersAfter, List<Integer> before, List<Integer> after) {

    /** Stands for a number that nobody counted, which is not none. */
    public static final int UNCOUNTED = -1;

    /**
     * @throws IllegalArgumentException if more were right than there are learners, or lists differ in length
     */
    public ClassGain {
        before = List.copyOf(before);
        after = List.copyOf(after);
        if (before.size() != after.size()
                || before.stream().anyMatch(it -> it < UNCOUNTED || it > learnersBefore)
                || after.stream().anyMatch(it -> it < UNCOUNTED || it > learnersAfter)) {
            throw new IllegalArgumentException("more right than learners");
        }
    }

    /** Share that was right before, 0 to 1; empty without learners or where nobody counted. */
    public OptionalDouble shareBefore(int objective) {
        return share(before.get(objective), learnersBefore);
    }

    /** Share that was right after, 0 to 1; empty without learners. */
    public OptionalDouble shareAfter(int objective) {
        return share(after.get(objective), learnersAfter);
    }

    /** Share of all counted answers that was right before. */
    public OptionalDouble shareBefore() {
        return share(before, learnersBefore);
    }

    /** Share of all counted answers that was right after. */
    public OptionalDouble shareAfter() {
        return share(after, learnersAfter);
    }

    /** Normalised gain for an objective. */
    public OptionalDouble gain(int objective) {
        return gain(shareBefore(objective), shareAfter(objective));
    }

    /** Normalised gain over all that was counted both times. */
    public OptionalDouble gain() {
        List<Integer> both = IntStream.range(0, before.size())
                .filter(place -> before.get(place) != UNCOUNTED && after.get(place) != UNCOUNTED)
                .boxed()
                .toList();
        return gain(
                share(both.stream().map(before::get).toList(), learnersBefore),
                share(both.stream().map(after::get).toList(), learnersAfter));
    }

    /**
     * The normalised gain: what was learned as a share of what was still to be learned, (after − before) / (1 −
     * before). Hake 1998, Am. J. Phys. 66, 64. At most 1; below 0 where less is right than before.
     *
     * @return empty where a share is unknown or nothing was left to learn
     */
    public static OptionalDouble gain(OptionalDouble before, OptionalDouble after) {
        if (before.isEmpty() || after.isEmpty() || before.getAsDouble() >= 1) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((after.getAsDouble() - before.getAsDouble()) / (1 - before.getAsDouble()));
    }

    private static OptionalDouble share(int right, int all) {
        return all > 0 && right != UNCOUNTED ? OptionalDouble.of((double) right / all) : OptionalDouble.empty();
    }

    private static OptionalDouble share(List<Integer> right, int learners) {
        List<Integer> counted = right.stream().filter(each -> each != UNCOUNTED).toList();
        return share(counted.stream().mapToInt(Integer::intValue).sum(), learners * counted.size());
    }
}
