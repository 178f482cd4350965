package org.sagwise.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.sagwise.part.NearMiss;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.KeyRules;
import org.sagwise.scenario.PartRules;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * The keys of one object in a catalogue file, held against the same rules as those of a scenario. A
 * key that is missing or wrong is noted as a defect and answered with a stand-in, so that the rest
 * of the object is looked at as well; whoever builds a part from the answers asks {@link #sound()}
 * first.
 */
final class CatalogueFields {

    private static final LocalText NO_TEXT = LocalText.same("?");

    private final String file;
    private final String place;
    private final Keys keys;
    private final List<CatalogueDefect> defects;
    private final Set<String> asked = new LinkedHashSet<>();
    private final int defectsBefore;

    CatalogueFields(String file, String place, Keys keys, List<CatalogueDefect> defects) {
        this.file = file;
        this.place = place;
        this.keys = keys;
        this.defects = defects;
        this.defectsBefore = defects.size();
    }

    /** Whether nothing wrong was found since this object was begun. */
    boolean sound() {
        return defects.size() == defectsBefore;
    }

    /** Whether this key is there. */
    boolean has(String key) {
        return keys.has(key);
    }

    /** All keys, in the order of the file. */
    Set<String> keys() {
        return keys.names();
    }

    /** A text that must be there; a stand-in of {@code "?"}. */
    String text(String key) {
        Optional<Object> value = required(key, "text");
        if (value.isPresent() && !(value.get() instanceof String)) {
            defect(key, Problem.WRONG_TYPE, "text", Places.typeOf(value.get()));
        }
        return keys.text(key).orElse("?");
    }

    /** A number that must be there and in this range; a stand-in of 1. */
    double number(String key, KeySpec.NumberType range) {
        return number(KeySpec.required(key, range)).orElse(1);
    }

    /** A number in this range that may be left out. */
    OptionalDouble maybeNumber(String key, KeySpec.NumberType range) {
        return number(KeySpec.optional(key, range));
    }

    private OptionalDouble number(KeySpec spec) {
        return values(List.of(spec), List.of(), KeyRules.WITHOUT_CATALOGUE).number(spec.name());
    }

    /** The keys of a table that are there, in the order of the file; noted is what is wrong with each, and among them. */
    Keys values(List<KeySpec> specs, List<KeyRule> rules, KeyRules check) {
        Set<String> names = specs.stream().map(KeySpec::name).collect(Collectors.toSet());
        asked.addAll(names);
        Keys there = keys.without(
                keys.names().stream().filter(name -> !names.contains(name)).toArray(String[]::new));
        check.check(there, specs, place).forEach(this::note);
        PartRules.check(rules, specs, there, place).forEach(this::note);
        return there;
    }

    /** A list of numbers of this length that must be there; a stand-in of ones. */
    double[] numbers(String key, int length) {
        double[] standIn = new double[length];
        Arrays.fill(standIn, 1);
        Optional<Object> value = required(key, "list");
        return value.map(it -> row(it, length).orElseGet(() -> {
                    defect(key, CatalogueDefect.Problem.NOT_A_TABLE, key, Integer.toString(length));
                    return standIn;
                }))
                .orElse(standIn);
    }

    /** A list of pairs of numbers that must be there; empty when it is not. */
    List<double[]> pairs(String key) {
        Optional<Object> value = required(key, "list");
        List<double[]> pairs = new ArrayList<>();
        List<?> rows = value.orElse(null) instanceof List<?> list ? list : List.of();
        rows.forEach(each -> row(each, 2).ifPresent(pairs::add));
        if (value.isPresent() && (rows.isEmpty() || pairs.size() < rows.size())) {
            defect(key, CatalogueDefect.Problem.NOT_A_TABLE, key, "2");
            return List.of();
        }
        return pairs;
    }

    private static Optional<double[]> row(Object value, int length) {
        return value instanceof List<?> list
                        && list.size() == length
                        && list.stream().allMatch(Number.class::isInstance)
                ? Optional.of(list.stream()
                        .mapToDouble(each -> ((Number) each).doubleValue())
                        .toArray())
                : Optional.empty();
    }

    /** A text in each language that is needed. */
    LocalText localText(String key) {
        required(key, "object");
        return object(key).map(CatalogueFields::inEachLanguage).orElse(NO_TEXT);
    }

    /** An object that may be left out. */
    Optional<CatalogueFields> object(String key) {
        asked.add(key);
        if (has(key) && keys.group(key).isEmpty()) {
            defect(
                    key,
                    Problem.WRONG_TYPE,
                    "object",
                    Places.typeOf(keys.values().get(key)));
        }
        return keys.group(key).map(inner -> new CatalogueFields(file, Places.key(place, key), inner, defects));
    }

    /** One of the known values that must be there; empty when it is not. */
    <T> Optional<T> oneOf(String key, Map<String, T> known) {
        String name = text(key);
        Optional<T> found = Optional.ofNullable(known.get(name));
        if (found.isEmpty() && !name.equals("?")) {
            defect(key, Problem.NOT_A_CHOICE, name, String.join(", ", offered(name, known.keySet())));
        }
        return found;
    }

    private static Collection<String> offered(String name, Set<String> known) {
        List<String> near = NearMiss.of(name, known);
        return (near.isEmpty() ? known : near).stream().sorted().toList();
    }

    /**
     * What {@code make} makes of the answers, after noting keys that nobody asked for; empty when
     * anything is wrong.
     */
    <T> Optional<T> build(Supplier<T> make) {
        finish();
        if (!sound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(make.get());
        } catch (IllegalArgumentException refusal) {
            note(Finding.of(place, CatalogueDefect.Problem.REFUSED, refusal.getMessage()));
            return Optional.empty();
        }
    }

    /** Keys that hold numbers, alone or in tables and objects, and so need a source. */
    Set<String> numberKeys() {
        Set<String> numbers = new LinkedHashSet<>();
        keys.values().forEach((key, value) -> {
            boolean words = key.equals("title") || key.equals("about");
            if (!words && !key.equals("sources") && !(value instanceof String)) {
                numbers.add(key);
            }
        });
        return numbers;
    }

    /** Notes keys that nobody asked for. */
    private void finish() {
        KeyRules.WITHOUT_CATALOGUE
                .check(keys, List.of(), place, List.copyOf(asked))
                .forEach(this::note);
    }

    /** Notes a defect of this key. */
    void defect(String key, Fault problem, String... details) {
        note(Finding.of(Places.key(place, key), problem, details));
    }

    private void note(Finding finding) {
        defects.add(new CatalogueDefect(file, finding));
    }

    private LocalText inEachLanguage() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String code : Languages.all()) {
            if (has(code) || Languages.needed().contains(code)) {
                texts.put(code, text(code));
            }
        }
        finish();
        if (texts.values().stream().anyMatch(String::isBlank)) {
            note(Finding.of(place, CatalogueDefect.Problem.ONE_LANGUAGE, String.join(", ", Languages.needed())));
            return NO_TEXT;
        }
        return new LocalText(texts);
    }

    /** What stands under a key that must be there; noted where it is not. */
    private Optional<Object> required(String key, String type) {
        asked.add(key);
        if (!has(key)) {
            note(Finding.of(place, Problem.MISSING_KEY, key, type));
        }
        return Optional.ofNullable(keys.values().get(key));
    }
}
