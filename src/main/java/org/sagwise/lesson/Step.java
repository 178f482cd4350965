package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.hazard.Signal;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.text.LocalText;

/** One step of a lesson. */
public sealed interface Step {

    Head head();

    default String id() {
        return head().id();
    }

    /** What leads from the bench before the step to the bench after it. */
    default List<Edit> solution() {
        return List.of();
    }

    /**
     * Whether the bench is worked on or looked at in this step, after a prediction has been made.
     */
    default boolean isObservation() {
        return this instanceof Do || this instanceof Measure;
    }

    /** Whether something is to be foretold before the bench may be touched. */
    default boolean predicts() {
        return this instanceof Estimate || this instanceof Choose choose && choose.role() == Role.PREDICT;
    }

    /** Whether it asks for an answer that the bench would tell. */
    default boolean asks() {
        return this instanceof Estimate || this instanceof Choose;
    }

    /** Whether it only tells something. */
    default boolean asksNothing() {
        return this instanceof Say || this instanceof Explain || this instanceof Caution || this instanceof Write;
    }

    /** Hints that can be asked for, the plainest last. */
    default List<LocalText> hints() {
        return List.of();
    }

    /** The word for its kind in a lesson file. */
    default String kind() {
        return this instanceof Choose choose
                ? choose.role().word()
                : getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    /**
     * What all steps have.
     *
     * @param id its name, unique in the lesson
     * @param text what the learner reads, Markdown
     * @param bench the bench that is laid out when the step begins; empty keeps the one there is
     * @param beside a bench shown beside it to compare with
     * @param look ids of parts and links to point out
     * @param note what only the instructor reads
     * @param skippable whether a class that is short of time may leave it out
     */
    record Head(
            String id,
            LocalText text,
            Optional<String> bench,
            Optional<String> beside,
            List<String> look,
            Optional<LocalText> note,
            boolean skippable) {

        public Head {
            look = List.copyOf(look);
        }

        /** The parts of a bench that it points out. */
        public List<String> partsOn(Scenario scenario) {
            return look.stream().filter(id -> scenario.part(id).isPresent()).toList();
        }

        /** Places of the links of a bench that it points out. */
        public Set<Integer> linksOn(Scenario scenario) {
            List<Link> links = scenario.links();
            return IntStream.range(0, links.size())
                    .filter(i -> links.get(i).id().filter(look::contains).isPresent())
                    .boxed()
                    .collect(Collectors.toSet());
        }

        /** A step that belongs to what nobody may skip. */
        public Head(
                String id,
                LocalText text,
                Optional<String> bench,
                Optional<String> beside,
                List<String> look,
                Optional<LocalText> note) {
            this(id, text, bench, beside, look, note, false);
        }
    }

    /** Tells something. */
    record Say(Head head) implements Step {}

    /** Explains what has been seen, beginning with the idea that many hold. */
    record Explain(Head head) implements Step {}

    /**
     * Asks for one's own words. Nobody checks them but who writes them, by a list; they are not kept.
     *
     * @param points what good words hold, each to be ticked
     * @param model how somebody might say it, shown when asked for
     */
    record Write(Head head, List<LocalText> points, LocalText model) implements Step {
        public Write {
            points = List.copyOf(points);
        }
    }

    /**
     * Asks for one answer of several.
     *
     * @param role whether something is predicted or looked back on
     * @param choices the answers
     * @param order whether the answers may stand in another order than the author's
     * @param also what a prediction asks for besides
     */
    record Choose(Head head, Role role, List<Choice> choices, Order order, Set<Also> also) implements Step {

        public Choose {
            choices = List.copyOf(choices);
            also = Set.copyOf(also);
        }

        /** A question that asks for its answer alone. */
        public Choose(Head head, Role role, List<Choice> choices, Order order) {
            this(head, role, choices, order, Set.of());
        }

        /** Place of the right answer. */
        public int right() {
            for (int i = 0; i < choices.size(); i++) {
                if (choices.get(i).isRight()) {
                    return i;
                }
            }
            throw new IllegalStateException("no right answer in " + id());
        }
    }

    /** What a prediction asks for besides its answer. */
    enum Also {
        /** A reason in one's own words. It is not kept, and stands beside what came out. */
        WHY,
        /** How sure one is; only then the bench may be touched. */
        HOW_SURE;

        /** Its word in a lesson file. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** How the answers of a question may stand. */
    enum Order {
        ANY,
        /** As written, for numbers that rise or an answer that speaks of those above it. */
        KEPT
    }

    /** What a question is for. */
    enum Role {
        /** Before it is seen; the button stays locked until the answer is in. */
        PREDICT,
        /** At the end, from memory. */
        CHECK;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Asks for a number before it is seen.
     *
     * @param expected the reading that will come out
     * @param share how far off still counts as met, as a share of the reading
     * @param reply what the learner is told afterwards
     */
    record Estimate(Head head, ReadingRef expected, double share, LocalText reply) implements Step {

        /** Whether a guess came close enough to what came out. */
        boolean isMet(OptionalDouble guess, OptionalDouble real) {
            return guess.isPresent()
                    && real.isPresent()
                    && Bounds.around(real.getAsDouble(), share * Math.abs(real.getAsDouble()))
                            .hold(guess.getAsDouble());
        }
    }

    /**
     * Asks for a change of the bench.
     *
     * @param until what must be so
     * @param solution moves that make it so
     * @param hints one after the other, the last the plainest
     */
    record Do(Head head, List<Condition> until, List<Edit> solution, List<LocalText> hints) implements Step {
        public Do {
            until = List.copyOf(until);
            solution = List.copyOf(solution);
            hints = List.copyOf(hints);
        }
    }

    /**
     * Asks for a reading, which the learner types.
     *
     * @param reading what to read
     * @param expected what the author expects there, in the unit of the reading
     * @param share how far a typed number may lie off, as a share of the reading
     * @param slack how far it may lie off in any case, in the unit of the reading
     * @param hints one after the other
     */
    record Measure(Head head, ReadingRef reading, double expected, double share, double slack, List<LocalText> hints)
            implements Step {
        public Measure {
            hints = List.copyOf(hints);
        }

        /** The range around a value that counts as met. */
        public Bounds around(double value) {
            return Bounds.around(value, Math.max(slack, share * Math.abs(value)));
        }
    }

    /**
     * Warns of something in the real world.
     *
     * @param signal how grave
     * @param harm what can happen
     * @param avoid what a competent person does instead
     */
    record Caution(Head head, Signal signal, LocalText harm, LocalText avoid) implements Step {}
}
