package org.sagwise.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;

/** Books readings into a {@link Ledger}. */
final class LedgerBook {

    /** Meters beside the coils take some millionths; that is no current lost past them. */
    private static final double ROUNDING = 1e-4;

    private final Readings readings;

    /** What watts are divided by to give volts, A; NaN where that would mean nothing. */
    private final double sharedA;

    private final List<Ledger.Row> rows = new ArrayList<>();

    private LedgerBook(Readings readings) {
        this.readings = readings;
        this.sharedA = coilsCarryAll(readings) ? readings.pack().loadCurrentA() : Double.NaN;
    }

    /**
     * Whether the current of every cell goes through the coils, so that volts for each ampere of
     * theirs mean something. Past a short, between fighting cells and through a board they do not.
     */
    private static boolean coilsCarryAll(Readings readings) {
        double most = readings.pack().loadCurrentA() * (1 + ROUNDING);
        return readings.cells().stream().allMatch(cell -> Math.abs(cell.currentA()) <= most)
                && readings.parts().stream().noneMatch(part -> part.kind() == PartKind.BOARD);
    }

    static Ledger of(Readings readings) {
        return new LedgerBook(readings).write();
    }

    private Ledger write() {
        PackReading pack = readings.pack();
        book(Ledger.Entry.GIVEN, pack.givenW());
        bookIf(!readings.cells().isEmpty(), Ledger.Entry.SAG, -pack.cellHeatW());
        bookIf(pack.chargingW() > 0, Ledger.Entry.CHARGING, -pack.chargingW());
        bookIf(pack.supplyHeatW() > 0, Ledger.Entry.SUPPLY, -pack.supplyHeatW());
        bookIf(!readings.links().isEmpty(), Ledger.Entry.LINKS, -linkHeat());
        for (Ledger.Entry entry : Ledger.Entry.values()) {
            entry.kind().ifPresent(kind -> bookKind(kind, entry));
            if (entry == Ledger.Entry.BOARDS) {
                bookIf(pack.boardHeatW() > 0, entry, -pack.boardHeatW());
            }
        }
        double rest = rows.stream().mapToDouble(Ledger.Row::powerW).sum();
        book(Ledger.Entry.BALANCE, rest);
        return new Ledger(rows, pack.loadCurrentA());
    }

    private double linkHeat() {
        return readings.links().stream().mapToDouble(LinkReading::heatW).sum();
    }

    private void bookKind(PartKind kind, Ledger.Entry entry) {
        Predicate<PartReading> isKind = part -> part.kind() == kind;
        Stream<PartReading> parts = readings.parts().stream().filter(isKind);
        bookIf(
                readings.parts().stream().anyMatch(isKind),
                entry,
                -parts.mapToDouble(PartReading::powerW).sum());
    }

    private void bookIf(boolean present, Ledger.Entry entry, double powerW) {
        if (present) {
            book(entry, powerW);
        }
    }

    private void book(Ledger.Entry entry, double powerW) {
        rows.add(new Ledger.Row(entry, powerW, perAmpere(powerW)));
    }

    private double perAmpere(double powerW) {
        return sharedA > 0 ? powerW / sharedA : Double.NaN;
    }
}
