package org.sagwise.words;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Scale;
import org.sagwise.quantity.Unit;

/** Writes a recipe as a line, by the same tables and words by which lines are read. */
final class LineWriter {

    private static final String MODEL = "model";

    private final Locale locale;
    private final List<String> clauses = new ArrayList<>();

    LineWriter(Locale locale) {
        this.locale = locale;
    }

    String write(Recipe recipe) {
        add(Layouts.of(recipe), said(Clause.CELLS, recipe.cells()));
        recipe.own().forEach((cell, keys) -> add(BenchBuilder.letter(cell), said(Clause.CELLS, keys)));
        if (!recipe.reversed().isEmpty()) {
            String letters =
                    recipe.reversed().stream().map(BenchBuilder::letter).collect(Collectors.joining(" "));
            add(letters, word("reversed"));
        }
        singles(recipe);
        coils(recipe);
        wires(recipe);
        recipe.contactMohm().ifPresent(mohm -> add(word(Clause.CONTACTS), milliohms(mohm)));
        recipe.joints().forEach((place, mohm) -> add(word(place), word(Clause.JOINT), milliohms(mohm)));
        recipe.cellJoints()
                .forEach((cell, mohm) -> add(BenchBuilder.letter(cell), word(Clause.JOINT), milliohms(mohm)));
        recipe.coilJoints()
                .forEach((coil, mohm) ->
                        add(word(Clause.COIL), String.valueOf(coil + 1), word(Clause.JOINT), milliohms(mohm)));
        recipe.shorts()
                .forEach((place, ohm) -> add(
                        word(Clause.SHORT),
                        word(place),
                        ohm.map(it -> amount("ohm", it, Unit.OHM)).orElse("")));
        recipe.ambientC().ifPresent(celsius -> add(word(Clause.AMBIENT), amount("ambient_C", celsius, Unit.CELSIUS)));
        if (recipe.isIdeal()) {
            add(word(Clause.IDEAL));
        }
        if (recipe.isHeld()) {
            add(word(Clause.HELD));
        }
        return String.join("; ", clauses);
    }

    private void singles(Recipe recipe) {
        for (PartKind kind : PartKind.values()) {
            Optional<Clause> clause = Clause.of(kind);
            Keys keys = recipe.single().get(kind);
            if (clause.isPresent() && keys != null) {
                boolean each = kind == PartKind.REVERSE_GUARD && recipe.guards() == Recipe.Guards.BEHIND_EACH_CELL;
                add(word(clause.get()), each ? word("each") : "", said(clause.get(), keys));
            }
        }
        if (recipe.isButtonless()) {
            add(word("none"), word(Clause.BUTTON));
        }
    }

    private void coils(Recipe recipe) {
        String how = recipe.coilsLie()
                .map(it -> word(it == Recipe.Coils.IN_A_ROW ? "in-a-row" : "side-by-side"))
                .orElse("");
        for (int i = 0; i < recipe.coils().size(); i++) {
            add(word(Clause.COIL), said(Clause.COIL, recipe.coils().get(i)), i == 0 ? how : "");
        }
    }

    private void wires(Recipe recipe) {
        if (!recipe.wire().values().isEmpty()) {
            add(word(Clause.WIRE), said(Clause.WIRE, recipe.wire()));
        }
        recipe.wires().forEach((place, keys) -> add(word(place), word(Clause.WIRE), said(Clause.WIRE, keys)));
    }

    private void add(String... words) {
        clauses.add(java.util.stream.Stream.of(words)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" ")));
    }

    private String word(Clause clause) {
        return word(clause.word());
    }

    private String word(String meaning) {
        return Vocabulary.written(meaning, locale);
    }

    private String milliohms(double mohm) {
        return amount("contact_mohm", mohm, Unit.OHM);
    }

    /** Whether every key of a part has a word; the first that has none. */
    static Optional<String> unsayable(Clause clause, Keys keys) {
        return flat(keys).entrySet().stream()
                .filter(entry -> !isSayable(clause, entry.getKey(), entry.getValue()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static boolean isSayable(Clause clause, String key, Object value) {
        boolean named = key.equals(MODEL)
                || key.equals("wire.alloy")
                || clause == Clause.CELLS && (key.equals("chemistry") || key.equals("format"));
        return named
                || flag(clause, key, value).isPresent()
                || value instanceof Double
                        && clause.terms().stream().anyMatch(term -> term.key().equals(key));
    }

    private static Optional<Clause.Flag> flag(Clause clause, String key, Object value) {
        return clause.flags().stream()
                .filter(flag -> flag.key().equals(key) && flag.value().equals(value))
                .findFirst();
    }

    /** Keys with those of their groups, each by its path. */
    private static Map<String, Object> flat(Keys keys) {
        Map<String, Object> flat = new LinkedHashMap<>();
        keys.values().forEach((key, value) -> {
            if (value instanceof Keys group) {
                group.values().forEach((inner, it) -> flat.put(key + "." + inner, it));
            } else {
                flat.put(key, value);
            }
        });
        return flat;
    }

    /** Names and bare amounts first, then words with the amounts that are theirs. */
    private String said(Clause clause, Keys keys) {
        List<String> plain = new ArrayList<>();
        Map<String, List<String>> worded = new LinkedHashMap<>();
        flat(keys).forEach((key, value) -> {
            Optional<Clause.Flag> flag = flag(clause, key, value);
            if (flag.isPresent()
                    && clause.terms().stream()
                            .noneMatch(it -> it.word().equals(flag.get().word()))) {
                plain.add(word(flag.get().word()));
            } else if (value instanceof String name) {
                plain.add(0, name);
            } else if (value instanceof Double number) {
                Clause.Term term = clause.terms().stream()
                        .filter(it -> it.key().equals(key))
                        .findFirst()
                        .orElseThrow();
                said(term, number, plain, worded);
            }
        });
        worded.forEach((word, amounts) -> plain.add(word(word) + " " + String.join(" ", amounts)));
        return String.join(" ", plain);
    }

    private void said(Clause.Term term, double number, List<String> plain, Map<String, List<String>> worded) {
        if (term.word().equals("awg")) {
            plain.add(number(number) + "awg");
        } else if (term.unit().isEmpty()) {
            plain.add(number(number) + " " + word(term.word()));
        } else if (term.word().isEmpty()) {
            plain.add(amount(term.key(), number, term.unit().get()));
        } else {
            worded.computeIfAbsent(term.word(), word -> new ArrayList<>())
                    .add(amount(term.key(), number, term.unit().get()));
        }
    }

    private String amount(String key, double number, Unit unit) {
        if (unit == Unit.FRACTION) {
            return number(unit.scale("%").fromUnit(number)) + " %";
        }
        String symbol =
                Clause.measure(key).map(Measure::scale).map(Scale::symbol).orElse("");
        return number(number) + " " + symbol;
    }

    /** All digits, with the decimal mark of the language. */
    private String number(double value) {
        String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        char mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        return plain.replace('.', mark);
    }
}
