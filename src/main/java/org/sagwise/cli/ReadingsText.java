package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.Notice;
import org.sagwise.reading.ProbeReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** Readings as tables that a person can read and paste into a post. */
final class ReadingsText {

    private final CallContext call;
    private final Texts texts;
    private final QuantityFormat format;
    private final Scenario scenario;
    private final Readings readings;
    private final List<String> lines = new ArrayList<>();

    private ReadingsText(CallContext call, Scenario scenario, Readings readings) {
        this.call = call;
        this.texts = call.texts();
        this.format = call.format();
        this.scenario = scenario;
        this.readings = readings;
    }

    /**
     * The lines, from the title to the notices; cautions are not among them.
     *
     * @param scenario what was read, for names
     * @param readings its readings at one moment
     */
    static List<String> lines(CallContext call, Scenario scenario, Readings readings) {
        return new ReadingsText(call, scenario, readings).write();
    }

    private List<String> write() {
        head();
        cells();
        coils();
        resistors();
        section(PathTable.of(call, scenario, readings).lines());
        section(LedgerText.lines(call, scenario, readings));
        readings.probes().ifPresent(this::probes);
        readings.notices().forEach(this::notice);
        return lines;
    }

    private void head() {
        if (!readings.title().isBlank()) {
            lines.add(readings.title());
        }
        lines.add(texts.say(moment(), format.print(scenario.ambientC(), Unit.CELSIUS)));
    }

    private String moment() {
        if (scenario.partsOf(PartKind.SWITCH).isEmpty()) {
            return "moment.no-button";
        }
        return readings.fired() ? "moment.held" : "moment.let-go";
    }

    private void cells() {
        if (readings.cells().isEmpty()) {
            return;
        }
        TextTable table = TextTable.headed(call, "cells", "rest", "terminal", "sag", "current", "limit", "load");
        for (CellReading cell : readings.cells()) {
            table.row(
                    name(cell.id()),
                    format.print(cell.restV(), Unit.VOLT),
                    format.print(cell.terminalV(), Unit.VOLT),
                    format.print(cell.sagV(), Unit.VOLT),
                    format.print(cell.currentA(), Unit.AMPERE),
                    format.print(cell.limitA(), Unit.AMPERE),
                    format.print(cell.loadFraction(), Unit.FRACTION));
        }
        section(table.lines());
    }

    private void coils() {
        if (readings.coils().isEmpty()) {
            return;
        }
        TextTable table = TextTable.headed(call, "coils", "resistance", "volts", "current", "power");
        for (CoilReading coil : readings.coils()) {
            load(table, coil.id(), coil.ohm(), coil.voltsV(), coil.currentA(), coil.powerW());
        }
        section(table.lines());
    }

    private void resistors() {
        List<Part> resistors = scenario.partsOf(PartKind.RESISTOR);
        if (resistors.isEmpty()) {
            return;
        }
        TextTable table = TextTable.headed(call, "resistors", "resistance", "volts", "current", "power");
        for (Part part : resistors) {
            readings.part(part.id())
                    .ifPresent(it ->
                            load(table, it.id(), part.numberOrDefault("ohm"), it.voltsV(), it.currentA(), it.powerW()));
        }
        section(table.lines());
    }

    private void load(TextTable table, String id, double ohm, double v, double a, double w) {
        table.row(
                name(id),
                format.print(ohm, Unit.OHM),
                format.print(v, Unit.VOLT),
                format.print(a, Unit.AMPERE),
                format.print(w, Unit.WATT));
    }

    private void probes(ProbeReading probes) {
        Names names = Names.in(texts.locale());
        MeterTexts meter = MeterTexts.in(texts.locale());
        lines.add("");
        lines.add(texts.say(
                "probes",
                names.terminal(scenario, probes.red()),
                names.terminal(scenario, probes.black()),
                meter.figure(probes.display())));
        String sentence = meter.sentence(probes.display(), scenario);
        if (!sentence.isEmpty()) {
            lines.addAll(Paragraph.lines(sentence, ""));
        }
    }

    private void notice(Notice notice) {
        lines.add("");
        String parts =
                String.join(", ", notice.parts().stream().map(id -> name(id)).toList());
        lines.addAll(Paragraph.lines(texts.say("notice." + Words.of(notice.kind()), parts), ""));
    }

    private void section(List<String> section) {
        if (!section.isEmpty()) {
            lines.add("");
            lines.addAll(section);
        }
    }

    private String name(String id) {
        return call.printable(scenario.part(id).map(Part::name).orElse(id));
    }
}
