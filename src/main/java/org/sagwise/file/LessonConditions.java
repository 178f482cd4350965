package org.sagwise.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.lesson.Bounds;
import org.sagwise.lesson.Condition;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.When;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Problem;

/** Reads what must be so before a step is done. */
final class LessonConditions {

    private static final List<String> HEADS = List.of(
            "part", "every", "joined", "apart", "layout", "button", "probes", "caution", "no_caution", "cautions");

    private LessonConditions() {}

    static List<Condition> read(Fields step, String key) {
        return step.items(key).stream().flatMap(fields -> one(fields).stream()).toList();
    }

    private static Optional<Condition> one(Fields fields) {
        List<String> heads = fields.present(HEADS);
        if (heads.size() != 1) {
            fields.wrong(LessonProblem.ONE_OF, String.join(", ", HEADS));
            return Optional.empty();
        }
        Optional<Condition> condition = of(heads.get(0), fields);
        fields.refuseOthers();
        return condition;
    }

    private static Optional<Condition> of(String head, Fields fields) {
        return switch (head) {
            case "part" -> Optional.of(reading(fields));
            case "every" -> every(fields);
            case "joined" -> fields.pair(head).map(it -> new Condition.Joined(it.get(0), it.get(1)));
            case "apart" -> fields.pair(head).map(it -> new Condition.Apart(it.get(0), it.get(1)));
            case "probes" -> fields.pair(head).map(it -> new Condition.ProbesOn(it.get(0), it.get(1)));
            case "layout" -> layout(fields);
            case "button" -> button(fields);
            case "caution" -> fields.word(head).map(Condition.CautionShown::new);
            case "no_caution" -> fields.word(head).map(Condition.CautionGone::new);
            default -> cautions(fields);
        };
    }

    private static Condition reading(Fields fields) {
        When when = when(fields);
        String part = fields.neededWord("part");
        String quantity = fields.neededWord("quantity");
        return new Condition.ReadingIs(new ReadingRef(Optional.empty(), when, part, quantity), bounds(fields));
    }

    private static Optional<Condition> every(Fields fields) {
        String word = fields.neededWord("every");
        When when = when(fields);
        String quantity = fields.neededWord("quantity");
        int count = fields.whole("count", 1, 100, 1);
        Bounds bounds = bounds(fields);
        Optional<PartKind> kind = PartKind.ofWord(word);
        if (kind.isEmpty()) {
            unknown(fields, "every", word, PartKind.words());
        }
        return kind.map(it -> new Condition.CountOf(it, count, when, quantity, bounds));
    }

    private static Optional<Condition> layout(Fields fields) {
        String word = fields.neededWord("layout");
        int cells = fields.whole("cells", 2, 100, 2);
        int turned = fields.whole("turned", 0, 50, 0);
        return switch (word) {
            case "series" -> Optional.of(new Condition.Layout(Condition.Arrangement.SERIES, cells, turned));
            case "parallel" -> Optional.of(new Condition.Layout(Condition.Arrangement.PARALLEL, cells, turned));
            default -> {
                unknown(fields, "layout", word, List.of("series", "parallel"));
                yield Optional.empty();
            }
        };
    }

    private static Optional<Condition> button(Fields fields) {
        String word = fields.neededWord("button");
        for (Press press : Press.values()) {
            if (press.name().toLowerCase(Locale.ROOT).equals(word)) {
                return Optional.of(new Condition.Button(press));
            }
        }
        unknown(fields, "button", word, List.of("held", "released"));
        return Optional.empty();
    }

    private static Optional<Condition> cautions(Fields fields) {
        String word = fields.neededWord("cautions");
        if (!word.equals("none")) {
            unknown(fields, "cautions", word, List.of("none"));
        }
        return Optional.of(new Condition.NothingGrave());
    }

    static When when(Fields fields) {
        String word = fields.word("when").orElse(When.HELD.word());
        Optional<When> when = When.ofWord(word);
        if (when.isEmpty()) {
            unknown(fields, "when", word, List.of("rest", "held", "run"));
        }
        return when.orElse(When.HELD);
    }

    private static Bounds bounds(Fields fields) {
        OptionalDouble is = fields.number("is");
        OptionalDouble least = fields.number("at_least");
        OptionalDouble most = fields.number("at_most");
        String within = fields.word("within").orElse("1%");
        if (fields.has("is") == (fields.has("at_least") || fields.has("at_most"))) {
            fields.wrong(LessonProblem.ONE_OF, "is, at_least, at_most");
            return Bounds.around(0, 0);
        }
        if (is.isPresent()) {
            return Bounds.around(is.getAsDouble(), tolerance(fields, within, is.getAsDouble()));
        }
        double low = least.orElse(Double.NEGATIVE_INFINITY);
        double high = most.orElse(Double.POSITIVE_INFINITY);
        if (low > high) {
            fields.wrong("at_most", Problem.OUT_OF_RANGE, Places.plain(high), Places.plain(low), "∞", "from");
            return new Bounds(high, low);
        }
        return new Bounds(low, high);
    }

    /** {@code 2%} of a value, or a plain number in its unit. */
    static double tolerance(Fields fields, String word, double value) {
        boolean share = word.endsWith("%");
        OptionalDouble number = Fields.parse(share ? word.substring(0, word.length() - 1) : word);
        if (number.isEmpty() || number.getAsDouble() < 0) {
            fields.wrong("within", LessonProblem.NOT_A_NUMBER, word);
            return 0;
        }
        return share ? number.getAsDouble() / 100 * Math.abs(value) : number.getAsDouble();
    }

    static void unknown(Fields fields, String key, String word, List<String> known) {
        fields.wrong(key, LessonProblem.UNKNOWN_WORD, word, String.join(", ", known));
    }
}
