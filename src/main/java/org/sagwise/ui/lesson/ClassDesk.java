package org.sagwise.ui.lesson;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Tally;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The votes of a class on the questions of its lessons: counts alone, and only until it goes. */
public final class ClassDesk {

    /**
     * The votes on one question.
     *
     * @param tally the counts
     * @param seen whether the class sees them
     */
    public record Vote(Tally tally, Seen seen) {}

    /** Whether the class sees a vote. */
    public enum Seen {
        COVERED,
        SHOWN
    }

    private final ReadOnlyObjectWrapper<Map<String, Vote>> votes =
            new ReadOnlyObjectWrapper<>(Map.of());

    /** All votes, by lesson and step. */
    public ReadOnlyObjectProperty<Map<String, Vote>> votesProperty() {
        return votes.getReadOnlyProperty();
    }

    /** The vote on the question at which a lesson is; empty where it asks for no choice. */
    public Optional<Vote> vote(LessonPlayer now) {
        return now.step() instanceof Step.Choose question
                ? Optional.of(
                        votes.get()
                                .getOrDefault(key(now), new Vote(Tally.of(question), Seen.COVERED)))
                : Optional.empty();
    }

    /** The vote on this question, if the class is to see it. */
    public Optional<Tally> shown(LessonPlayer now) {
        return vote(now).filter(vote -> vote.seen() == Seen.SHOWN).map(Vote::tally);
    }

    /** Writes down how many hands were raised for one answer, 0 to 999. */
    public void count(LessonPlayer now, int place, int hands) {
        vote(now)
                .ifPresent(
                        vote -> put(now, new Vote(vote.tally().with(place, hands), vote.seen())));
    }

    /** Shows the counts to the class, or covers them again. */
    public void turn(LessonPlayer now) {
        vote(now)
                .ifPresent(
                        vote ->
                                put(
                                        now,
                                        new Vote(
                                                vote.tally(),
                                                vote.seen() == Seen.SHOWN
                                                        ? Seen.COVERED
                                                        : Seen.SHOWN)));
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
