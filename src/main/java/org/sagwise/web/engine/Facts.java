package org.sagwise.web.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.sagwise.assessment.Assessment;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;

/** What can be read of a bench, in words: the one line above all, and a table that mirrors the picture. */
public final class Facts {

    private final Assessment bench;
    private final Words words;

    public Facts(Assessment bench, Words words) {
        this.bench = bench;
        this.words = words;
    }

    /** The headline of a bench: watts, and volts and amps at the load. */
    public String watts() {
        return words.quantity(bench.readings().pack().deliveredW(), Unit.WATT);
    }

    /** What becomes of the volts on the way. */
    public String way() {
        OptionalDouble sag = bench.readings().cells().stream()
                .mapToDouble(CellReading::sagV)
                .filter(Double::isFinite)
                .map(Math::abs)
                .max();
        double drop = bench.readings().pack().dropV();
        return words.say(
                "way",
                words.quantity(bench.readings().pack().loadCurrentA(), Unit.AMPERE),
                words.quantity(sag.orElse(0), Unit.VOLT),
                Double.isFinite(drop) ? words.quantity(drop, Unit.VOLT) : "–");
    }

    /**
     * A line of the table.
     *
     * @param part id of the part
     */
    public record Row(String part, String name, String kind, String volts, String amps, String watts, String more) {}

    /** One line a part: cells first, then whatever else lies there, in file order. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        bench.readings().cells().forEach(cell -> rows.add(cell(cell)));
        bench.readings().parts().forEach(part -> rows.add(part(part)));
        return rows;
    }

    private Row cell(CellReading cell) {
        return new Row(
                cell.id(),
                part(cell.id()).name(),
                kind(part(cell.id())),
                words.quantity(cell.terminalV(), Unit.VOLT),
                words.quantity(cell.currentA(), Unit.AMPERE),
                words.quantity(cell.heatW(), Unit.WATT),
                words.say(
                        "table.cell",
                        words.quantity(cell.restV(), Unit.VOLT),
                        words.quantity(cell.sagV(), Unit.VOLT),
                        words.limit(cell.limitA(), Unit.AMPERE)));
    }

    private Row part(PartReading reading) {
        Part part = part(reading.id());
        String state = words.ui().say("state." + reading.stateKey());
        String more = bench.readings()
                .coil(reading.id())
                .map(CoilReading::ohm)
                .map(ohm -> words.quantity(ohm, Unit.OHM))
                .orElse(state);
        return new Row(
                reading.id(),
                Names.in(words.locale()).label(part),
                kind(part),
                words.quantity(reading.voltsV(), Unit.VOLT),
                words.quantity(reading.currentA(), Unit.AMPERE),
                words.quantity(reading.powerW(), Unit.WATT),
                more);
    }

    /** Kind and name, without saying anything twice: "Cell A", but "Old cell". */
    public String called(Part part) {
        String kind = kind(part);
        Locale locale = words.locale();
        String name = Names.in(locale).label(part);
        boolean inName = name.toLowerCase(locale).contains(kind.toLowerCase(locale));
        return Names.capital(inName ? name : words.ui().say("touch.called", kind, name), locale);
    }

    private String kind(Part part) {
        return words.ui().say("kind." + part.kind().word());
    }

    private Part part(String id) {
        return bench.bench().part(id);
    }
}
