package org.sagwise.scenario;

import java.util.Collection;
import java.util.List;
import org.sagwise.part.NearMiss;

/** Writes the place of a key in a file, as in {@code parts[2].internal_mohm}. */
public final class Places {

    /**
     * A bench of more parts is no work of hands: suggestions there would cost time, not save it.
     */
    private static final int MOST_COMPARED = 200;

    private static final int MOST_SHOWN = 30;

    private Places() {}

    public static String key(String place, String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    public static String item(String list, int index) {
        return list + "[" + index + "]";
    }

    /** The known word that was probably meant, or nothing: fills the blank of a problem's text. */
    public static String near(String word, Collection<String> known) {
        List<String> first = known.stream().limit(MOST_COMPARED).toList();
        return NearMiss.of(word, first).stream().findFirst().orElse("");
    }

    /** Names in a row, cut where nobody would read on. */
    static String row(Collection<String> names) {
        String row = String.join(
                ", ",
                names.stream().filter(name -> !name.isBlank()).limit(MOST_SHOWN).toList());
        return names.size() > MOST_SHOWN ? row + ", …" : row;
    }

    /** The word for what a value is, in the details of a finding. */
    public static String typeOf(Object value) {
        if (value == null) {
            return "nothing";
        } else if (value instanceof Number) {
            return "number";
        } else if (value instanceof Boolean) {
            return "flag";
        } else if (value instanceof String) {
            return "text";
        }
        return value instanceof List ? "list" : "object";
    }

    /** A number as a person would write it in a file: {@code 4}, not {@code 4.0}. */
    public static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }
}
