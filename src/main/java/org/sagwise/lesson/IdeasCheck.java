package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;
import org.sagwise.text.Texts;

/**
 * A check of ideas before and after a course: two forms of twelve questions of our own, one for each objective. Ten
 * objectives follow those of the DIRECT test (Engelhardt and Beichner 2004, Am. J. Phys. 72, 98; from memory), two are
 * ours, on packs. Texts stand in the bundle {@code ideas-check}.
 */
public final class IdeasCheck {

    private static final String RIGHT = "R";

    private IdeasCheck() {}

    /** One of two forms that ask for the same in other situations. */
    public enum Form {
        /** Before. */
        A,
        /** After. */
        B;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is asked for, with the ideas behind the answers of both forms, {@code R} for the right one. */
    public enum Objective {
        SHORT(
                "short",
                "pulse-rating-is-the-rating R bare-wire-does-nothing",
                "R bare-wire-does-nothing cell-gives-fixed-current"),
        TWO_ENDS("two-ends", "any-contact-will-do rule-in-wrong-place R", "R any-contact-will-do rule-in-wrong-place"),
        LOOP("loop", "R one-wire-is-enough cell-is-a-tank", "only-downstream-feels-it R cell-is-a-tank"),
        OHMS(
                "ohms",
                "more-coils-more-ohms cell-gives-fixed-current R",
                "two-cells-twice-everything R current-is-shared-out"),
        DIAGRAMS(
                "diagrams",
                "R picture-tells-layout count-of-parts-decides",
                "picture-tells-layout count-of-parts-decides R"),
        POWER(
                "power",
                "two-cells-twice-everything R coil-fits-any-layout",
                "coil-fits-any-layout rule-in-wrong-place R"),
        ENERGY(
                "energy",
                "capacity-doubles-in-series energy-current-charge-are-one R",
                "energy-current-charge-are-one R cell-is-a-tank"),
        CONSERVATION(
                "conservation",
                "current-is-used-up R two-currents-clash",
                "currents-need-not-add-up only-downstream-feels-it R"),
        SOURCE(
                "source",
                "cell-gives-fixed-current volts-and-amps-are-one R",
                "R cell-gives-fixed-current volts-and-amps-are-one"),
        VOLTS("volts", "R no-current-no-volts rule-in-wrong-place", "parallel-always-stronger R no-current-no-volts"),
        LIMITS(
                "limits",
                "series-spares-the-cells R two-cells-twice-everything",
                "parallel-doubles-limit R more-cells-more-watts"),
        PARTNERS(
                "partners",
                "on-and-off-mixed-up fresh-cell-rescues-flat-one R",
                "reversed-in-series-is-harmless R series-is-more-dangerous");

        private final String key;
        private final Map<Form, List<String>> ideas;

        Objective(String key, String formA, String formB) {
            this.key = key;
            this.ideas = Map.of(Form.A, List.of(formA.split(" ")), Form.B, List.of(formB.split(" ")));
        }

        /** What somebody does who has reached it. */
        public String sentence(Locale locale) {
            return texts(locale).say("objective." + key);
        }
    }

    private static Texts texts(Locale locale) {
        return Texts.in("ideas-check", locale);
    }

    /** The question for an objective in a form. */
    public static Step.Choose question(Form form, Objective objective) {
        String key = form.key() + "." + objective.key + ".";
        List<Choice> choices = new ArrayList<>();
        for (String word : objective.ideas.get(form)) {
            Optional<Idea> idea = word.equals(RIGHT) ? Optional.empty() : Idea.ofWord(word);
            LocalText reply =
                    idea.map(it -> inAll(locale -> it.sentence(locale))).orElseGet(() -> inAll(objective::sentence));
            choices.add(new Choice(text(key + (choices.size() + 1)), idea, reply));
        }
        Step.Head head = new Step.Head(
                objective.key, text(key + "text"), Optional.empty(), Optional.empty(), List.of(), Optional.empty());
        return new Step.Choose(head, Step.Role.CHECK, choices, Step.Order.KEPT);
    }

    private static LocalText text(String key) {
        return inAll(locale -> texts(locale).say(key));
    }

    private static LocalText inAll(Function<Locale, String> said) {
        Map<String, String> all = new TreeMap<>();
        Languages.locales().forEach(locale -> all.put(locale.getLanguage(), said.apply(locale)));
        return new LocalText(all);
    }

    /** All questions of a form, in the order of the objectives. */
    public static List<Step.Choose> questions(Form form) {
        return Stream.of(Objective.values())
                .map(objective -> question(form, objective))
                .toList();
    }

    /**
     * The objectives that somebody's answers show.
     *
     * @param answers place of the answer to each question; a missing or negative one is no answer
     */
    public static List<Objective> shown(Form form, List<Integer> answers) {
        List<Objective> shown = new ArrayList<>();
        for (Objective objective : Objective.values()) {
            int place = objective.ordinal();
            if (place < answers.size()
                    && answers.get(place) == question(form, objective).right()) {
                shown.add(objective);
            }
        }
        return shown;
    }
}
