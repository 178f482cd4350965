package org.sagwise.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** At which moment a reading is taken. */
public enum When {
    /** With the button let go. */
    REST,
    /** At the instant at which the button is pressed; taken where a lesson says nothing. */
    HELD,
    /** At the end of a run with the button held until a cell reaches its cut-off. */
    RUN;

    /** The word for it in a lesson file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<When> ofWord(String word) {
        return Stream.of(values()).filter(when -> when.word().equals(word)).findFirst();
    }
}
