package org.sagwise.file;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A number as it stands in a file, to the letter: {@code 1.50} stays {@code 1.50}.
 *
 * <p>Numbers of other tools are kept so, since we cannot know whether their digits matter.
 */
public final class WrittenNumber extends Number {

    private static final long serialVersionUID = 1L;

    private static final List<WrittenNumber> DIGITS = IntStream.range(0, 10)
            .mapToObj(i -> new WrittenNumber(String.valueOf(i)))
            .toList();

    private final String letters;

    private WrittenNumber(String letters) {
        this.letters = letters;
    }

    /** A number by its letters; the ten digits, of which tables of other tools are full, once. */
    static WrittenNumber of(String letters) {
        boolean digit = letters.length() == 1 && letters.charAt(0) >= '0' && letters.charAt(0) <= '9';
        return digit ? DIGITS.get(letters.charAt(0) - '0') : new WrittenNumber(letters);
    }

    @Override
    public double doubleValue() {
        return Double.parseDouble(letters);
    }

    @Override
    public float floatValue() {
        return (float) doubleValue();
    }

    @Override
    public long longValue() {
        return (long) doubleValue();
    }

    @Override
    public int intValue() {
        return (int) doubleValue();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WrittenNumber number && number.letters.equals(letters);
    }

    @Override
    public int hashCode() {
        return letters.hashCode();
    }

    @Override
    public String toString() {
        return letters;
    }
}
