package org.sagwise.reading;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.PartKind;

/**
 * The account in which every watt and every volt is booked once, and which balances: what cells
 * give, less what is lost on the way, less what the coils take, is zero.
 *
 * <p>Volts are watts for each ampere of the coils' current. Along one loop these are the very steps
 * of the staircase; with cells side by side they are its current-weighted mean, so that the column
 * still adds up. Where current flows past the coils (a short, cells that fight, a board in between)
 * they would mean nothing and are left out.
 *
 * @param rows the bookings, in the order of the way of the current
 * @param loadCurrentA current through the coils, A
 */
public record Ledger(List<Row> rows, double loadCurrentA) {

    public Ledger {
        rows = List.copyOf(rows);
    }

    /** What a row books. */
    public enum Entry {
        GIVEN,
        SAG,
        CHARGING,
        SUPPLY,
        LINKS,
        SWITCHES(PartKind.SWITCH),
        FUSES(PartKind.FUSE),
        PTCS(PartKind.PTC),
        GUARDS(PartKind.REVERSE_GUARD),
        METERS(PartKind.METER),
        BOARDS,
        COILS(PartKind.COIL),
        RESISTORS(PartKind.RESISTOR),
        BALANCE;

        private final Optional<PartKind> kind;

        Entry() {
            kind = Optional.empty();
        }

        Entry(PartKind kind) {
            this.kind = Optional.of(kind);
        }

        /** The kind of part whose power it books; empty where it books something else. */
        public Optional<PartKind> kind() {
            return kind;
        }
    }

    /**
     * One booking.
     *
     * @param entry what it books
     * @param powerW W, positive for what is given and negative for what is taken
     * @param voltsV the same for each ampere of the coils' current, V; NaN without one, and where
     *     current flows past the coils
     */
    public record Row(Entry entry, double powerW, double voltsV) {}

    /** Books a set of readings. Rows that nothing on the bench could fill are left out. */
    public static Ledger of(Readings readings) {
        return LedgerBook.of(readings);
    }
}
