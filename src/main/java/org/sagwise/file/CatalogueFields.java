package org.sagwise.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.NearMiss;
import org.sagwise.part.key.KeySpec;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * The keys of one object in a catalogue file. A key that is missing or wrong is noted as a defect
 * and answered with a stand-in, so that the rest of the object is looked at as well; whoever builds
 * a part from the answers asks {@link #sound()} first.
 */
final class CatalogueFields {

    private final String file;
    private final String place;
    private final Map<String, Object> values;
    private final List<CatalogueDefect> defects;
    private final Set<String> asked = new LinkedHashSet<>();
    private final int defectsBefore;

    CatalogueFields(String file, String place, Map<String, Object> values, List<CatalogueDefect> defects) {
        this.file = file;
        this.place = place;
        this.values = values;
        this.defects = defects;
        this.defectsBefore = defects.size();
    }

    /** Whether nothing wrong was found since this object was begun. */
    boolean sound() {
        return defects.size() == defectsBefore;
    }

    /** Whether this key is there. */
    boolean has(String key) {
        return values.containsKey(key);
    }

    /** All keys, in the order of the file. */
    Set<String> keys() {
        return values.keySet();
    }

    /** A text that must be there; a stand-in of {@code "?"}. */
    String text(String key) {
        Object value = required(key);
        if (value instanceof String text) {
            return text;
        }
        if (value != null) {
            defect(key, Problem.NOT_A_TEXT);
        }
        return "?";
    }

    /** A number above 0 that must be there; a stand-in of 1. */
    double positive(String key) {
        return atLeast(required(key), key, Problem.NOT_ABOVE_ZERO).orElse(1);
    }

    /** A number of 0 or more that must be there; a stand-in of 1. */
    double notNegative(String key) {
        return atLeast(required(key), key, Problem.BELOW_ZERO).orElse(1);
    }

    /** A number above 0 that may be left out. */
    OptionalDouble maybePositive(String key) {
        return atLeast(optional(key), key, Problem.NOT_ABOVE_ZERO);
    }

    /** A number of 0 or more that may be left out. */
    OptionalDouble maybeNotNegative(String key) {
        return atLeast(optional(key), key, Problem.BELOW_ZERO);
    }

    /** A whole number of 0 or more that may be left out. */
    OptionalInt maybeWhole(String key) {
        OptionalDouble number = maybeNotNegative(key);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        int whole = (int) number.getAsDouble();
        if (whole != number.getAsDouble()) {
            defect(key, Problem.NOT_WHOLE, Double.toString(number.getAsDouble()));
        }
        return OptionalInt.of(whole);
    }

    /** Says which keys may stand here; those that must are asked for besides. */
    void expect(Set<String> keys) {
        asked.addAll(keys);
    }

    /** Notes that a key is missing. */
    void missing(String key) {
        defect(key, Problem.MISSING);
    }

    /** A number that is there, within the range of its kind; empty when it is not. */
    Optional<Double> number(String key, KeySpec.NumberType type) {
        if (!(optional(key) instanceof Double number) || number.isInfinite()) {
            defect(key, Problem.NOT_A_NUMBER);
            return Optional.empty();
        }
        if (type.allows(number)) {
            return Optional.of(number);
        }
        defect(key, outside(number, type), number.toString(), plain(type.least()) + "–" + plain(type.most()));
        return Optional.empty();
    }

    /** A {@code true} or {@code false} that is there; empty when it is neither. */
    Optional<Boolean> flag(String key) {
        if (optional(key) instanceof Boolean flag) {
            return Optional.of(flag);
        }
        defect(key, Problem.NOT_A_FLAG);
        return Optional.empty();
    }

    private static Problem outside(double number, KeySpec.NumberType type) {
        if (type.grain() == KeySpec.Grain.WHOLE && number != Math.rint(number)) {
            return Problem.NOT_WHOLE;
        } else if (number < 0 && type.allows(0)) {
            return Problem.BELOW_ZERO;
        }
        return number <= 0 && type.least() >= 0 ? Problem.NOT_ABOVE_ZERO : Problem.OUT_OF_RANGE;
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** One of the known words that must be there; empty when it is not. */
    Optional<String> word(String key, Collection<String> known) {
        Map<String, String> words = new LinkedHashMap<>();
        known.forEach(word -> words.put(word, word));
        return oneOf(key, words);
    }

    /** A list of numbers of this length that must be there; a stand-in of ones. */
    double[] numbers(String key, int length) {
        double[] standIn = new double[length];
        Arrays.fill(standIn, 1);
        Object value = required(key);
        if (value == null) {
            return standIn;
        }
        if (value instanceof List<?> list
                && list.size() == length
                && list.stream().allMatch(Double.class::isInstance)) {
            return list.stream().mapToDouble(Double.class::cast).toArray();
        }
        defect(key, Problem.NOT_A_TABLE, Integer.toString(length));
        return standIn;
    }

    /** A list of pairs of numbers that must be there; empty when it is not. */
    List<double[]> pairs(String key) {
        Object value = required(key);
        List<double[]> pairs = new ArrayList<>();
        if (value instanceof List<?> rows) {
            for (Object row : rows) {
                if (row instanceof List<?> pair
                        && pair.size() == 2
                        && pair.get(0) instanceof Double x
                        && pair.get(1) instanceof Double y) {
                    pairs.add(new double[] {x, y});
                }
            }
            if (pairs.size() == rows.size()) {
                return pairs;
            }
        }
        if (value != null) {
            defect(key, Problem.NOT_A_TABLE, "2");
        }
        return List.of();
    }

    /** A text in both languages that must be there. */
    LocalText localText(String key) {
        return object(key, Need.REQUIRED).map(CatalogueFields::inEachLanguage).orElse(STAND_IN);
    }

    /** An object that may be left out. */
    Optional<CatalogueFields> maybeObject(String key) {
        return object(key, Need.OPTIONAL);
    }

    /** An object that must be there; empty when it is not. */
    Optional<CatalogueFields> requiredObject(String key) {
        return object(key, Need.REQUIRED);
    }

    /** One of the known values that must be there; empty when it is not. */
    <T> Optional<T> oneOf(String key, Map<String, T> known) {
        String name = text(key);
        Optional<T> found = Optional.ofNullable(known.get(name));
        if (found.isEmpty() && !name.equals("?")) {
            unknown(key, Problem.UNKNOWN_VALUE, name, known.keySet());
        }
        return found;
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
            defect("", Problem.REFUSED, refusal.getMessage());
            return Optional.empty();
        }
    }

    /** Keys that hold numbers, alone or in tables and objects, and so need a source. */
    Set<String> numberKeys() {
        Set<String> keys = new LinkedHashSet<>();
        values.forEach((key, value) -> {
            boolean words = key.equals("title") || key.equals("about");
            if (!words && !key.equals("sources") && !(value instanceof String)) {
                keys.add(key);
            }
        });
        return keys;
    }

    /** Notes keys that nobody asked for. */
    void finish() {
        for (String key : values.keySet()) {
            if (!asked.contains(key)) {
                unknown(key, Problem.UNKNOWN_KEY, key, asked);
            }
        }
    }

    /** Notes a defect of this key; an empty key stands for the object as a whole. */
    void defect(String key, Problem problem, String... details) {
        List<String> all = new ArrayList<>(List.of(details));
        all.add(0, key);
        defects.add(new CatalogueDefect(file, path(key), problem, all));
    }

    private void unknown(String key, Problem problem, String name, Set<String> known) {
        List<String> near = NearMiss.of(name, known);
        List<String> offered = new ArrayList<>(near.isEmpty() ? known : near);
        Collections.sort(offered);
        defect(key, problem, name, String.join(", ", offered));
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
            defect("", Problem.ONE_LANGUAGE, String.join(", ", Languages.needed()));
            return STAND_IN;
        }
        return new LocalText(texts);
    }

    private Optional<CatalogueFields> object(String key, Need need) {
        Object value = need == Need.REQUIRED ? required(key) : optional(key);
        if (value == null) {
            return Optional.empty();
        }
        Optional<Map<String, Object>> object = asObject(value);
        if (object.isEmpty()) {
            defect(key, Problem.NOT_AN_OBJECT);
        }
        return object.map(inner -> new CatalogueFields(file, path(key), inner, defects));
    }

    /** The value as an object, where it is one. */
    static Optional<Map<String, Object>> asObject(Object value) {
        if (!(value instanceof Map<?, ?> map)) {
            return Optional.empty();
        }
        Map<String, Object> object = new LinkedHashMap<>();
        map.forEach((key, inner) -> object.put((String) key, inner));
        return Optional.of(object);
    }

    private OptionalDouble atLeast(Object value, String key, Problem whenLess) {
        if (value == null) {
            return OptionalDouble.empty();
        }
        if (!(value instanceof Double number) || number.isInfinite()) {
            defect(key, Problem.NOT_A_NUMBER);
            return OptionalDouble.empty();
        }
        if (number < 0 || (number == 0 && whenLess == Problem.NOT_ABOVE_ZERO)) {
            defect(key, whenLess, number.toString());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number);
    }

    private Object required(String key) {
        Object value = optional(key);
        if (value == null) {
            defect(key, Problem.MISSING);
        }
        return value;
    }

    private Object optional(String key) {
        asked.add(key);
        return values.get(key);
    }

    private String path(String key) {
        if (key.isEmpty() || place.isEmpty()) {
            return place + key;
        }
        return place + "." + key;
    }

    private enum Need {
        REQUIRED,
        OPTIONAL
    }

    private static final LocalText STAND_IN = LocalText.same("?");
}
