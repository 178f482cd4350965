package org.sagwise.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.key.KeySpec;

/** The kinds of part, with their terminals in the order in which currents and volts are counted. */
public enum PartKind {
    CELL("+", "-", "can"),
    COIL("1", "2"),
    SWITCH("1", "2"),
    FUSE("1", "2"),
    BOARD("in+", "in-", "out+", "out-"),
    CHARGER("+", "-"),
    SUPPLY("+", "-"),
    RESISTOR("1", "2"),
    METER("red", "black");

    private final List<String> terminals;

    PartKind(String... terminals) {
        this.terminals = List.of(terminals);
    }

    /** The terminals, the one first from which current through the part is counted. */
    public List<String> terminals() {
        return terminals;
    }

    /** The word for this kind in a scenario file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What keys a part of this kind may have, besides {@code id}, {@code kind}, {@code label}. */
    public List<KeySpec> keys() {
        return PartKeys.of(this);
    }

    public static Optional<PartKind> ofWord(String word) {
        return Stream.of(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Stream.of(values()).map(PartKind::word).toList();
    }
}
