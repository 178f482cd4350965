package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.ScenarioRules;

/**
 * The questions that open a lesson, and how far one is with them. Immutable.
 *
 * @param asked the questions in words
 * @param at place of the present one
 * @param chosen the answer to it, if there is one yet
 */
public record RecallRound(List<Asked> asked, int at, OptionalInt chosen) {

    /**
     * A question in words, every reading said by the engine.
     *
     * @param item which question it is
     * @param text the question
     * @param options its answers
     * @param replies what is said to who chose them
     * @param ideas the ideas behind them
     */
    public record Asked(
            Recall.Item item, String text, List<String> options, List<String> replies, List<Optional<Idea>> ideas) {

        public Asked {
            options = List.copyOf(options);
            replies = List.copyOf(replies);
            ideas = List.copyOf(ideas);
        }

        public int right() {
            return item.question().right();
        }
    }

    public RecallRound {
        asked = List.copyOf(asked);
    }

    /** A round of these questions; empty without any. */
    public static Optional<RecallRound> of(List<Recall.Item> items, Catalogue catalogue, Locale locale) {
        List<Asked> asked = new ArrayList<>();
        items.forEach(item -> asked.add(asked(item, catalogue, locale)));
        return asked.isEmpty() ? Optional.empty() : Optional.of(new RecallRound(asked, 0, OptionalInt.empty()));
    }

    private static Asked asked(Recall.Item item, Catalogue catalogue, Locale locale) {
        Lesson lesson = item.lesson();
        var named = lesson.scenarios(locale);
        Track track = Track.of(lesson, named, new ScenarioRules(catalogue));
        Situation there = Situation.of(track.before().get(item.step()), named, catalogue);
        int seen = item.question().predicts() ? Track.replyAt(lesson, item.step()) - 1 : item.step();
        Situation then = there.with(track.after().get(seen));
        List<Choice> choices = item.question().choices();
        return new Asked(
                item,
                Filling.fill(item.question().head().text().in(locale), there, locale),
                choices.stream()
                        .map(it -> Filling.fill(it.text().in(locale), there, locale))
                        .toList(),
                choices.stream()
                        .map(it -> Filling.fill(it.reply().in(locale), then, locale))
                        .toList(),
                choices.stream().map(Choice::idea).toList());
    }

    public Asked question() {
        return asked.get(at);
    }

    /** After an answer; what is once chosen stays. */
    public RecallRound choose(int place) {
        return chosen.isPresent() || place < 0 || place >= question().options().size()
                ? this
                : new RecallRound(asked, at, OptionalInt.of(place));
    }

    /** The next question; empty after the last. */
    public Optional<RecallRound> next() {
        return at + 1 < asked.size()
                ? Optional.of(new RecallRound(asked, at + 1, OptionalInt.empty()))
                : Optional.empty();
    }

    /** Whether the answer given is the right one. */
    public boolean isMet() {
        return chosen.isPresent() && chosen.getAsInt() == question().right();
    }

    /** What is kept of the answer. */
    public Map<String, Recall.Asked> noted(Map<String, Recall.Asked> before, int lessonsGone) {
        Map<String, Recall.Asked> after = new HashMap<>(before);
        String key = question().item().key();
        after.put(key, Recall.Asked.after(Optional.ofNullable(before.get(key)), isMet(), lessonsGone));
        return after;
    }
}
