package org.sagwise.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.sagwise.lesson.Bounds;
import org.sagwise.lesson.Condition;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.When;
import org.sagwise.part.NearMiss;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.TerminalRef;

/** Reads what must be so before a step is done, each check by its row. */
final class LessonConditions {

    /**
     * A key of a check.
     *
     * @param name as lessons write it
     * @param isNeeded whether the check asks for it
     * @param schema what it may hold, as the JSON Schema of lessons says it
     */
    record Key(String name, boolean isNeeded, String schema) {

        private static Key needed(String name, String schema) {
            return new Key(name, true, schema);
        }

        private static Key optional(String name, String schema) {
            return new Key(name, false, schema);
        }
    }

    /**
     * A check.
     *
     * @param keys the one that it is known by first
     * @param reader makes the condition of its keys, or says what is wrong with them
     */
    record Check(List<Key> keys, Function<Fields, Optional<Condition>> reader) {

        String head() {
            return keys.get(0).name();
        }

        /** Also with the keys that say which reading, when, and how much it shall be. */
        private Check ofReading() {
            return new Check(Stream.concat(keys.stream(), READING.stream()).toList(), reader);
        }
    }

    private static final String TEXT = "{'type': 'string'}";
    private static final String NUMBER = "{'type': 'number'}";
    private static final String TERMINALS =
            "{'type': 'array', 'items': {'$ref': '#/$defs/terminal'}, 'minItems': 2, 'maxItems': 2}";

    private static final List<Key> READING = List.of(
            Key.needed("quantity", TEXT),
            Key.optional(
                    "when",
                    "{'enum': ['rest', 'held', 'run'], 'default': 'held', 'description': 'Button let go, the instant"
                            + " of pressing, or the end of a run with the button held until a cell is at its"
                            + " cut-off.'}"),
            Key.optional("is", NUMBER),
            Key.optional(
                    "within",
                    "{'type': ['string', 'number'], 'description':"
                            + " 'A share such as 2%, or a number in the unit of the reading.'}"),
            Key.optional("at_least", NUMBER),
            Key.optional("at_most", NUMBER));

    /** All checks; {@code LessonSchemaTest} makes of them what the JSON Schema says of conditions. */
    static final List<Check> CHECKS = List.of(
            check(LessonConditions::reading, Key.needed("part", TEXT)).ofReading(),
            check(
                            LessonConditions::every,
                            Key.needed("every", "{'type': 'string', 'description': 'Kind of part.'}"),
                            Key.optional("count", whole(1)))
                    .ofReading(),
            ofTerminals("joined", Condition.Joined::new),
            ofTerminals("apart", Condition.Apart::new),
            ofTerminals("probes", Condition.ProbesOn::new),
            check(
                    LessonConditions::layout,
                    Key.needed("layout", "{'enum': ['series', 'parallel']}"),
                    Key.optional("cells", whole(2)),
                    Key.optional("turned", whole(0))),
            check(LessonConditions::button, Key.needed("button", "{'enum': ['held', 'released']}")),
            ofWord("caution", Condition.CautionShown::new),
            ofWord("no_caution", Condition.CautionGone::new),
            check(LessonConditions::cautions, Key.needed("cautions", "{'const': 'none'}")));

    private static final List<String> HEADS = CHECKS.stream().map(Check::head).toList();

    private LessonConditions() {}

    private static Check check(Function<Fields, Optional<Condition>> reader, Key... keys) {
        return new Check(List.of(keys), reader);
    }

    private static Check ofTerminals(String head, BiFunction<TerminalRef, TerminalRef, Condition> maker) {
        return check(
                fields -> fields.pair(head).map(it -> maker.apply(it.get(0), it.get(1))), Key.needed(head, TERMINALS));
    }

    private static Check ofWord(String head, Function<String, Condition> maker) {
        return check(fields -> fields.word(head).map(maker), Key.needed(head, TEXT));
    }

    private static String whole(int least) {
        return "{'type': 'integer', 'minimum': " + least + "}";
    }

    static List<Condition> read(Fields step, String key) {
        return step.items(key).stream().flatMap(fields -> one(fields).stream()).toList();
    }

    private static Optional<Condition> one(Fields fields) {
        List<String> heads = fields.present(HEADS);
        if (heads.size() != 1) {
            fields.wrong(LessonProblem.ONE_OF, String.join(", ", HEADS));
            return Optional.empty();
        }
        Optional<Condition> condition =
                CHECKS.get(HEADS.indexOf(heads.get(0))).reader().apply(fields);
        fields.refuseOthers();
        return condition;
    }

    private static Optional<Condition> reading(Fields fields) {
        When when = when(fields);
        String part = fields.neededWord("part");
        String quantity = fields.neededWord("quantity");
        ReadingRef reading = new ReadingRef(Optional.empty(), when, part, quantity);
        return Optional.of(new Condition.ReadingIs(reading, bounds(fields)));
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
        List<String> near = NearMiss.of(word, known);
        if (near.isEmpty()) {
            fields.wrong(key, LessonProblem.UNKNOWN_WORD, word, String.join(", ", known));
        } else {
            fields.wrong(key, LessonProblem.MISSPELT, word, String.join(", ", near));
        }
    }
}
