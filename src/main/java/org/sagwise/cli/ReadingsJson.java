package org.sagwise.cli;

import java.util.Optional;
import org.sagwise.reading.Balance;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.MeterDisplay;
import org.sagwise.reading.PartReading;
import org.sagwise.reading.ProbeReading;
import org.sagwise.reading.ReadingTable;
import org.sagwise.reading.Readings;

/**
 * Readings as JSON. Keys end in their unit; a key may be added, but none changes its meaning or
 * goes without a new format. Current of a cell is positive when it discharges.
 */
final class ReadingsJson {

    private final JsonWriter json;

    ReadingsJson(JsonWriter json) {
        this.json = json;
    }

    /**
     * Writes everything that can be measured, as keys of the object that is open.
     *
     * @param readings at one moment
     */
    void keys(Readings readings) {
        json.text("title", readings.title());
        json.flag("fired", readings.fired());
        json.objects("cells", readings.cells(), this::cell);
        json.objects("coils", readings.coils(), this::coil);
        json.objects("parts", readings.parts(), this::part);
        json.objects("links", readings.links(), this::link);
        json.object("pack", () -> numbers(ReadingTable.PACK, readings.pack()));
        probes(readings.probes());
        json.object("nodes", () -> readings.nodes().forEach((node, v) -> json.number(node.toString(), v)));
        balance(readings.balance());
    }

    private void cell(CellReading cell) {
        json.text("id", cell.id());
        numbers(ReadingTable.CELL, cell);
    }

    private void coil(CoilReading coil) {
        json.text("id", coil.id());
        numbers(ReadingTable.COIL, coil);
    }

    private void part(PartReading part) {
        json.text("id", part.id());
        json.text("kind", part.kind().word());
        numbers(ReadingTable.PART, part);
        json.text("state", Words.of(part.state()));
    }

    private void link(LinkReading link) {
        json.text("from", link.from().toString());
        json.text("to", link.to().toString());
        numbers(ReadingTable.LINK, link);
    }

    private <T> void numbers(ReadingTable<T> table, T read) {
        table.rows().forEach(row -> json.number(row.name(), row.of(read)));
    }

    private void probes(Optional<ProbeReading> probes) {
        if (probes.isEmpty()) {
            json.nothing("probes");
            return;
        }
        json.object("probes", () -> {
            json.text("red", probes.get().red().toString());
            json.text("black", probes.get().black().toString());
            json.number("volts_V", probes.get().voltsV());
            json.text("mode", probes.get().mode().word());
            display(probes.get().display());
        });
    }

    private void display(MeterDisplay display) {
        json.number("current_A", display instanceof MeterDisplay.Amps amps ? amps.currentA() : Double.NaN);
        boolean open = display instanceof MeterDisplay.Ohms ohms && Double.isInfinite(ohms.ohm());
        json.number("ohm", display instanceof MeterDisplay.Ohms ohms && !open ? ohms.ohm() : Double.NaN);
        if (display instanceof MeterDisplay.Refused refused) {
            json.text("refused", Words.of(refused.why()));
        } else {
            json.nothing("refused");
        }
    }

    private void balance(Balance balance) {
        json.object("balance", () -> {
            json.number("kcl_worst_A", balance.kclWorstA());
            json.number("power_error_W", balance.powerErrorW());
        });
    }

    /** Writes the account, as a key of the object that is open. */
    void ledger(Ledger ledger) {
        json.objects("ledger", ledger.rows(), row -> {
            json.text("entry", Words.of(row.entry()));
            json.number("volts_V", row.voltsV());
            json.number("power_W", row.powerW());
        });
    }
}
