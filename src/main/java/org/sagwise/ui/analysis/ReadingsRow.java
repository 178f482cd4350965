package org.sagwise.ui.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.NamedReading;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;

/**
 * One line of the table of parts and readings, all in words.
 *
 * @param name what the part or joint is called
 * @param kind what it is
 * @param volts across it
 * @param amps through it
 * @param watts turned over in it
 * @param remark what else there is to say
 * @param lit what it is on the bench
 * @param readings its volts, amps and watts by name
 */
record ReadingsRow(
        String name,
        String kind,
        String volts,
        String amps,
        String watts,
        String remark,
        Selection lit,
        List<NamedReading> readings) {

    /** Every part and every joint, parts first, in file order. */
    static List<ReadingsRow> of(Assessment assessment, Wording wording) {
        PartTexts texts = new PartTexts(wording);
        List<ReadingsRow> rows = new ArrayList<>();
        for (Part part : assessment.scenario().parts()) {
            assessment.readings().cell(part.id()).ifPresent(c -> rows.add(cell(part, c, wording)));
            assessment.readings().part(part.id()).ifPresent(reading -> rows.add(other(part, reading, wording)));
        }
        for (LinkReading link : assessment.readings().links()) {
            rows.add(link(link, assessment, texts, wording));
        }
        return rows;
    }

    private static ReadingsRow cell(Part part, CellReading cell, Wording wording) {
        return new ReadingsRow(
                Names.in(wording.locale()).label(part),
                new PartTexts(wording).kind(part.kind()),
                wording.quantity(cell.terminalV(), Unit.VOLT),
                wording.quantity(cell.currentA(), Unit.AMPERE),
                wording.quantity(cell.heatW(), Unit.WATT),
                wording.say(
                        "table.cell",
                        wording.quantity(cell.restV(), Unit.VOLT),
                        wording.quantity(cell.sagV(), Unit.VOLT),
                        wording.limit(cell.limitA(), Unit.AMPERE)),
                Selection.part(part.id()),
                readings(part.id(), "terminal_V", "heat_W"));
    }

    private static ReadingsRow other(Part part, PartReading reading, Wording wording) {
        PartTexts texts = new PartTexts(wording);
        return new ReadingsRow(
                Names.in(wording.locale()).label(part),
                texts.kind(part.kind()),
                wording.quantity(reading.voltsV(), Unit.VOLT),
                wording.quantity(reading.currentA(), Unit.AMPERE),
                wording.quantity(reading.powerW(), Unit.WATT),
                texts.state(reading),
                Selection.part(part.id()),
                readings(part.id(), "volts_V", "power_W"));
    }

    private static ReadingsRow link(LinkReading link, Assessment assessment, PartTexts texts, Wording wording) {
        return new ReadingsRow(
                texts.ends(assessment, link),
                texts.joint(assessment.scenario().links().get(link.index())),
                wording.quantity(link.dropV(), Unit.VOLT),
                wording.quantity(link.currentA(), Unit.AMPERE),
                wording.quantity(link.heatW(), Unit.WATT),
                wording.quantity(link.ohm(), Unit.OHM),
                Selection.link(link.index()),
                readings(Link.nameOf(assessment.scenario().links(), link.index()), "drop_V", "heat_W"));
    }

    private static List<NamedReading> readings(String of, String volts, String watts) {
        return Stream.of(volts, "current_A", watts)
                .map(quantity -> new NamedReading(Press.HELD, of, quantity))
                .toList();
    }
}
