package org.sagwise.caution;

import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;

/**
 * Says the details of a caution.
 *
 * @param bundle words of the language
 * @param format how it writes numbers
 */
record DetailWords(ResourceBundle bundle, QuantityFormat format) {

    /** Longer lists end in "and 7 more". */
    private static final int MOST_NAMES = 4;

    /** Units by the ending of a detail's name, longer endings before those they end in. */
    private static final Map<String, Unit> ENDINGS = new LinkedHashMap<>();

    static {
        ENDINGS.put("Share", Unit.FRACTION);
        ENDINGS.put("Ohm", Unit.OHM);
        ENDINGS.put("Mm", Unit.METRE);
        ENDINGS.put("Ah", Unit.AMPERE_HOUR);
        ENDINGS.put("A", Unit.AMPERE);
        ENDINGS.put("V", Unit.VOLT);
        ENDINGS.put("W", Unit.WATT);
        ENDINGS.put("S", Unit.SECOND);
    }

    /**
     * A detail in words; empty if its number is not known.
     *
     * @throws IllegalArgumentException if there is no detail of this name
     */
    Optional<String> say(String name, Object detail) {
        if (detail == null) {
            throw new IllegalArgumentException("no detail " + name);
        }
        if (detail instanceof Double number) {
            return number(name.endsWith("Mm") ? number / 1000 : number, unit(name));
        }
        return Optional.of(word(detail));
    }

    /** A number with its unit; empty if it is not known. */
    Optional<String> number(double value, Unit unit) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(format.print(value, unit));
    }

    /** What is said of a number that is not known, where a sentence has no words of its own. */
    String unknown() {
        return bundle.getString("unknown");
    }

    String when(Caution.When when) {
        return bundle.getString("when." + when);
    }

    private static Unit unit(String name) {
        return ENDINGS.entrySet().stream()
                .filter(entry -> name.endsWith(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit in " + name));
    }

    /** A name, a text, or a list of them. */
    String word(Object detail) {
        if (detail instanceof PartName part) {
            return name(part);
        }
        return detail instanceof List<?> list
                ? join(list.stream().map(this::word).toList())
                : detail.toString();
    }

    private String name(PartName part) {
        String kind = part.kind().word();
        if (part.isPlain()) {
            return fill("name.only." + kind, part.word());
        }
        return part.needsKind() ? fill("name." + kind, part.word()) : part.word();
    }

    private String join(List<String> words) {
        if (words.size() > MOST_NAMES) {
            String shown = row(words.subList(0, MOST_NAMES - 1));
            return fill("list.rest", shown, words.size() - MOST_NAMES + 1);
        }
        List<String> front = new ArrayList<>(words);
        if (front.size() < 2) {
            return String.join("", front);
        }
        String last = front.remove(front.size() - 1);
        return fill("list.pair", row(front), last);
    }

    private String row(List<String> words) {
        return words.stream().reduce((a, b) -> fill("list.more", a, b)).orElse("");
    }

    private String fill(String key, Object... words) {
        return new MessageFormat(bundle.getString(key), format.locale()).format(words);
    }
}
