package org.sagwise.file;

/**
 * A number as it stands in a file, to the letter: {@code 1.50} stays {@code 1.50}.
 *
 * <p>Numbers of other tools are kept so, since we cannot know whether their digits matter.
 */
public final class WrittenNumber extends Number {

    private static final long serialVersionUID = 1L;

    private final String letters;

    WrittenNumber(String letters) {
        this.letters = letters;
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
