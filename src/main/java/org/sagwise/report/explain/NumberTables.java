package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Readings;
import org.sagwise.report.post.Block;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Press;

/** The numbers of a bench: each cell, each coil, and where volts and watts go. */
final class NumberTables {

    private static final double NO_CURRENT_A = 1e-3;

    private final Speech speech;
    private final Moment moment;
    private final Assessment assessment;
    private final List<Block> blocks = new ArrayList<>();

    private NumberTables(Speech speech, Moment moment) {
        this.speech = speech;
        this.moment = moment;
        this.assessment = moment.assessment();
    }

    static List<Block> of(Speech speech, Moment moment) {
        NumberTables tables = new NumberTables(speech, moment);
        tables.write();
        return tables.blocks;
    }

    private void write() {
        boolean hasButton = !assessment.scenario().partsOf(PartKind.SWITCH).isEmpty();
        Readings rest = assessment.with(Press.RELEASED).readings();
        if (hasButton && tells(rest)) {
            blocks.add(new Block.Paragraph(when("let-go")));
            cells(rest);
        }
        Readings fired = assessment.with(Press.HELD).readings();
        blocks.add(new Block.Paragraph(when(hasButton ? "held" : "no-button")));
        cells(fired);
        coils(fired);
        losses(fired);
    }

    private String when(String button) {
        return moment.isStart()
                ? speech.say("moment." + button)
                : speech.say("moment." + button + "-at", speech.print(moment.atS(), Unit.SECOND));
    }

    /** Whether anything happens with the button let go. */
    private boolean tells(Readings rest) {
        return rest.cells().stream().anyMatch(cell -> Math.abs(cell.currentA()) > NO_CURRENT_A)
                || assessment.cautions().stream().anyMatch(caution -> caution.when() == Caution.When.AT_REST);
    }

    private void cells(Readings readings) {
        if (readings.cells().isEmpty()) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (CellReading cell : readings.cells()) {
            rows.add(List.of(
                    word(cell.id()),
                    speech.print(cell.restV(), Unit.VOLT),
                    speech.print(cell.terminalV(), Unit.VOLT),
                    speech.print(cell.sagV(), Unit.VOLT),
                    speech.print(cell.currentA(), Unit.AMPERE),
                    speech.print(cell.limitA(), Unit.AMPERE),
                    speech.print(cell.heatW(), Unit.WATT)));
        }
        blocks.add(table(List.of("cell", "rest", "loaded", "sag", "current", "limit", "heat"), rows));
        boolean pushed = readings.cells().stream().anyMatch(c -> c.currentA() < -NO_CURRENT_A);
        if (pushed) {
            blocks.add(new Block.Paragraph(speech.say("numbers.minus")));
        }
    }

    private void coils(Readings readings) {
        if (readings.coils().isEmpty()) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (CoilReading coil : readings.coils()) {
            rows.add(List.of(
                    word(coil.id()),
                    speech.print(coil.ohm(), Unit.OHM),
                    speech.print(Math.abs(coil.voltsV()), Unit.VOLT),
                    speech.print(Math.abs(coil.currentA()), Unit.AMPERE),
                    speech.print(coil.powerW(), Unit.WATT)));
        }
        blocks.add(table(List.of("coil", "ohm", "volts", "current", "watts"), rows));
    }

    private void losses(Readings readings) {
        Ledger ledger = assessment.with(Press.HELD).ledger();
        List<Ledger.Row> rows = ledger.rows().stream()
                .filter(row -> row.entry() != Ledger.Entry.BALANCE)
                .toList();
        if (!(readings.pack().givenW() > 0) || rows.size() < 2) {
            return;
        }
        boolean hasVolts = rows.stream().anyMatch(row -> !Double.isNaN(row.voltsV()));
        blocks.add(table(
                hasVolts ? List.of("where", "volts", "watts") : List.of("where", "watts"),
                rows.stream().map(row -> row(row, hasVolts)).toList()));
    }

    private List<String> row(Ledger.Row row, boolean hasVolts) {
        String entry = speech.say("ledger." + row.entry().name().toLowerCase(Locale.ROOT));
        String watts = speech.print(row.powerW(), Unit.WATT);
        return hasVolts ? List.of(entry, speech.print(row.voltsV(), Unit.VOLT), watts) : List.of(entry, watts);
    }

    private Block table(List<String> heads, List<List<String>> rows) {
        return new Block.Table(heads.stream().map(h -> speech.say("head." + h)).toList(), rows);
    }

    private String word(String id) {
        return Names.in(speech.locale()).label(speech.scenario(), id);
    }
}
