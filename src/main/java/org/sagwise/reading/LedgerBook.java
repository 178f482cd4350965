package org.sagwise.reading;

import org.sagwise.scenario.PartKind;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Books readings into a {@link Ledger}. */
final class LedgerBook {

    private final Readings readings;
    private final double loadCurrentA;
    private final List<Ledger.Row> rows = new ArrayList<>();

    private LedgerBook(Readings readings) {
        this.readings = readings;
        this.loadCurrentA = readings.pack().loadCurrentA();
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
        bookKind(PartKind.SWITCH, Ledger.Entry.SWITCHES);
        bookKind(PartKind.FUSE, Ledger.Entry.FUSES);
        bookKind(PartKind.METER, Ledger.Entry.METERS);
        bookIf(pack.boardHeatW() > 0, Ledger.Entry.BOARDS, -pack.boardHeatW());
        bookKind(PartKind.COIL, Ledger.Entry.COILS);
        bookKind(PartKind.RESISTOR, Ledger.Entry.RESISTORS);
        return Ledger.of(rows, loadCurrentA);
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
        rows.add(new Ledger.Row(entry, powerW, Ledger.perAmpere(powerW, loadCurrentA)));
    }
}
