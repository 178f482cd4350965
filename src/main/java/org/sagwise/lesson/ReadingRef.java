package org.sagwise.lesson;

import java.util.Optional;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ReadingTable;

/**
 * Names one reading, as in {@code coil.power_W}, {@code rest/A.terminal_V} or {@code
 * two/run/pack.time_s}: a bench, a moment, a part and a quantity.
 *
 * @param bench a bench that the lesson names; empty for the one that the learner works on
 * @param when the moment
 * @param part id of a part or of a link, or {@code pack} or {@code probes}
 * @param quantity what is read, its unit in the ending of the name
 */
public record ReadingRef(Optional<String> bench, When when, String part, String quantity) {

    /** Reads a name; empty if the text has not that shape. */
    public static Optional<ReadingRef> parse(String text) {
        String[] way = text.strip().split("/", -1);
        int last = way.length - 1;
        int dot = way[last].indexOf('.');
        if (dot < 1 || dot == way[last].length() - 1) {
            return Optional.empty();
        }
        String part = way[last].substring(0, dot);
        String quantity = way[last].substring(dot + 1);
        Optional<When> said = last > 0 ? When.ofWord(way[last - 1]) : Optional.empty();
        int names = last - (said.isPresent() ? 1 : 0);
        if (names > 1 || (names == 1 && way[0].isBlank())) {
            return Optional.empty();
        }
        Optional<String> bench = names == 1 ? Optional.of(way[0]) : Optional.empty();
        return Optional.of(new ReadingRef(bench, said.orElse(When.HELD), part, quantity));
    }

    /** The unit in which the reading is given. */
    public Unit unit() {
        return ReadingTable.unitOf(quantity);
    }

    @Override
    public String toString() {
        return bench.map(name -> name + "/").orElse("")
                + (when == When.HELD ? "" : when.word() + "/")
                + part
                + "."
                + quantity;
    }
}
