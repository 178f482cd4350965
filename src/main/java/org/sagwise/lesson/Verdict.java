package org.sagwise.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.quantity.QuantityFormat;

/**
 * A question beside what the learner said and what is so.
 *
 * @param step place of the question
 * @param question the question
 * @param said what the learner said; empty if it was left open or shown
 * @param right what is right
 * @param met whether both agree
 * @param idea the idea that the learner's answer stands for
 * @param reply what the learner is told
 * @param sureness how sure the learner was; empty where that was not asked
 */
public record Verdict(
        int step,
        String question,
        Optional<String> said,
        String right,
        boolean met,
        Optional<Idea> idea,
        String reply,
        Optional<Sureness> sureness) {

    /** Whether somebody was sure of what is not so: the idea sits firmly. */
    public boolean isFirmMiss() {
        return !met && isSure();
    }

    public boolean isSure() {
        return sureness.filter(Sureness.SURE::equals).isPresent();
    }

    /** Whether somebody guessed, and rightly: the reason is not known yet. */
    public boolean isLuck() {
        return met && sureness.filter(Sureness.GUESS::equals).isPresent();
    }

    /**
     * @param asked the bench at the time of the question: what its texts speak of
     * @param then the bench that answered it: what the reply speaks of
     */
    static Verdict of(int place, Step step, Answers given, Situation asked, Situation then, Locale locale) {
        String question = Filling.fill(step.head().text().in(locale), asked, locale);
        if (step instanceof Step.Choose choose) {
            Choice right = choose.choices().get(choose.right());
            Optional<Choice> said = given.choice().isPresent()
                    ? Optional.of(choose.choices().get(given.choice().getAsInt()))
                    : Optional.empty();
            return new Verdict(
                    place,
                    question,
                    said.map(it -> Filling.fill(it.text().in(locale), asked, locale)),
                    Filling.fill(right.text().in(locale), asked, locale),
                    said.filter(Choice::isRight).isPresent(),
                    said.flatMap(Choice::idea),
                    Filling.fill(said.orElse(right).reply().in(locale), then, locale),
                    given.sureness());
        }
        return of(place, (Step.Estimate) step, question, given, then, locale);
    }

    private static Verdict of(
            int place, Step.Estimate estimate, String question, Answers given, Situation then, Locale locale) {
        OptionalDouble real = then.read(estimate.expected());
        return new Verdict(
                place,
                question,
                given.number().isPresent() ? Optional.of(print(given.number(), estimate, locale)) : Optional.empty(),
                print(real, estimate, locale),
                estimate.isMet(given.number(), real),
                Optional.empty(),
                Filling.fill(estimate.reply().in(locale), then, locale),
                Optional.empty());
    }

    private static String print(OptionalDouble value, Step.Estimate estimate, Locale locale) {
        return QuantityFormat.forPeople(locale).print(value, estimate.expected().unit());
    }
}
