package org.sagwise.scenario;

import org.sagwise.part.NearMiss;

import java.util.Collection;

/** Writes the place of a key in a file, as in {@code parts[2].internal_mohm}. */
public final class Places {

    private Places() {}

    public static String key(String place, String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    public static String item(String list, int index) {
        return list + "[" + index + "]";
    }

    /** The known word that was probably meant, or nothing: fills the blank of a problem's text. */
    static String near(String word, Collection<String> known) {
        return NearMiss.of(word, known).stream().findFirst().orElse("");
    }

    /** A number as a person would write it in a file: {@code 4}, not {@code 4.0}. */
    public static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }
}
