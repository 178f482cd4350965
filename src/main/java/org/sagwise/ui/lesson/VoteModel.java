package org.sagwise.ui.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Tally;

/** The votes of a class on the questions of its lessons: counts alone, and only until it goes. */
public final class VoteModel {

    /**
     * The votes on one question.
     *
     * @param first the counts of the first vote
     * @param again those of the second, after the class has talked; empty before it
     * @param seen whether the class sees them
     */
    public record Vote(Tally first, Optional<Tally> again, Seen seen) {

        /** The vote that is counted now. */
        public Tally tally() {
            return again.orElse(first);
        }

        /** All votes, the first first. */
        public List<Tally> rounds() {
            return again.map(second -> List.of(first, second)).orElse(List.of(first));
        }

        Vote with(Tally counted) {
            return again.isPresent() ? new Vote(first, Optional.of(counted), seen) : new Vote(counted, again, seen);
        }
    }

    /** Whether the class sees a vote. */
    public enum Seen {
        COVERED,
        SHOWN
    }

    private final ReadOnlyObjectWrapper<Map<String, Vote>> votes = new ReadOnlyObjectWrapper<>(Map.of());

    /** All votes, by lesson and step. */
    public ReadOnlyObjectProperty<Map<String, Vote>> votesProperty() {
        return votes.getReadOnlyProperty();
    }

    /** The vote on the question at which a lesson is; empty where it asks for no choice. */
    public Optional<Vote> vote(LessonPlayer now) {
        return now.step() instanceof Step.Choose question
                ? Optional.of(votes.get()
                        .getOrDefault(key(now), new Vote(Tally.of(question), Optional.empty(), Seen.COVERED)))
                : Optional.empty();
    }

    /** The vote on this question, if the class is to see it. */
    public Optional<Vote> shown(LessonPlayer now) {
        return vote(now).filter(vote -> vote.seen() == Seen.SHOWN);
    }

    /** Writes down how many hands were raised for one answer, 0 to 999. */
    public void count(LessonPlayer now, int place, int hands) {
        vote(now).ifPresent(vote -> put(now, vote.with(vote.tally().with(place, hands))));
    }

    /** Shows the counts to the class, or covers them again. */
    public void turn(LessonPlayer now) {
        vote(now).ifPresent(vote -> put(now, turned(vote)));
    }

    private static Vote turned(Vote vote) {
        Seen other = vote.seen() == Seen.SHOWN ? Seen.COVERED : Seen.SHOWN;
        return new Vote(vote.first(), vote.again(), other);
    }

    /** Lets the class vote once more; the first vote stays beside the second. */
    public void voteAgain(LessonPlayer now) {
        if (now.step() instanceof Step.Choose question) {
            vote(now)
                    .ifPresent(vote -> put(now, new Vote(vote.first(), Optional.of(Tally.of(question)), Seen.COVERED)));
        }
    }

    /** Forgets all votes. */
    public void clear() {
        votes.set(Map.of());
    }

    private void put(LessonPlayer now, Vote vote) {
        Map<String, Vote> changed = new HashMap<>(votes.get());
        changed.put(key(now), vote);
        votes.set(Map.copyOf(changed));
    }

    private static String key(LessonPlayer now) {
        return now.lesson().id() + "/" + now.step().id();
    }
}
