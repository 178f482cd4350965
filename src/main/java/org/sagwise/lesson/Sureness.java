package org.sagwise.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How sure somebody is of an answer. A wrong answer that was surely right stands for a firm idea, one that was guessed
 * for none: the third tier of tests such as that of Peşman and Eryılmaz 2010, doi 10.1080/00220670903383002.
 */
public enum Sureness {
    GUESS,
    THINK,
    SURE;

    /** Its word in what is kept. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** By its word; empty for any other. */
    public static Optional<Sureness> ofWord(String word) {
        return Stream.of(values()).filter(it -> it.word().equals(word)).findFirst();
    }
}
