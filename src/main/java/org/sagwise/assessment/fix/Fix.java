package org.sagwise.assessment.fix;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.text.Texts;

/** An edit that cures something, with a name such as "Turn cell B". */
public final class Fix {

    private final FixKind kind;
    private final List<Object> words;
    private final Set<String> changed;
    private final Function<Scenario, Edit> edit;

    /**
     * @param kind what kind of cure it is, which has its name
     * @param words what the name says: lists of parts, {@link Quantity}, {@link Joints}, names of
     *     terminals and texts
     * @param changed ids of parts and links that it changes
     * @param edit what it does to a bench; a joint is found by what it is, since other cures may have moved its place
     */
    Fix(FixKind kind, List<Object> words, Set<String> changed, Function<Scenario, Edit> edit) {
        this.kind = kind;
        this.words = List.copyOf(words);
        this.changed = Set.copyOf(changed);
        this.edit = edit;
    }

    /** One that changes parts alone, which keep their names. */
    Fix(FixKind kind, List<Object> words, Set<String> changed, Edit edit) {
        this(kind, words, changed, before -> edit);
    }

    /**
     * A number in a name.
     *
     * @param value in the unit
     * @param unit its unit
     */
    record Quantity(double value, Unit unit) {}

    /**
     * Joints in a name.
     *
     * @param ends both ends of each
     */
    record Joints(List<List<TerminalName>> ends) {}

    /**
     * Numbers for several parts in a name.
     *
     * @param parts the parts
     * @param values one each, in the unit
     * @param unit their unit
     */
    record Each(List<Part> parts, List<Double> values, Unit unit) {}

    /** What kind of cure it is. */
    public FixKind kind() {
        return kind;
    }

    /** What it does, as a command: "Turn cell B". */
    public String name(Locale locale) {
        Object[] said = words.stream().map(word -> said(word, locale)).toArray();
        return Texts.in("fixes", locale).say(kind.key(), said);
    }

    /** Ids of the parts and links that it changes. */
    public Set<String> changed() {
        return changed;
    }

    /** The scenario with the edit made: the one for which it was offered, or one that another cure has made of it. */
    public Scenario apply(Scenario scenario) {
        return edit.apply(scenario).apply(scenario);
    }

    private static Object said(Object word, Locale locale) {
        if (word instanceof Quantity quantity) {
            return QuantityFormat.forPeople(locale).print(quantity.value(), quantity.unit());
        }
        Names names = Names.in(locale);
        if (word instanceof Each each) {
            QuantityFormat format = QuantityFormat.forPeople(locale);
            return IntStream.range(0, each.parts().size())
                    .mapToObj(i -> Texts.in("fixes", locale)
                            .say(
                                    "each",
                                    names.parts(List.of(each.parts().get(i))),
                                    format.print(each.values().get(i), each.unit())))
                    .collect(Collectors.joining(", "));
        }
        if (word instanceof Joints joints) {
            return joints.ends().stream()
                    .map(ends -> Texts.in("fixes", locale)
                            .say("joint", names.terminal(ends.get(0)), names.terminal(ends.get(1))))
                    .collect(Collectors.joining(", "));
        }
        return word instanceof List<?> parts
                ? names.parts(parts.stream().map(Part.class::cast).toList())
                : names.word(word);
    }
}
