package org.sagwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.Alloy;
import org.sagwise.part.Band;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.Gauge;
import org.sagwise.part.WireTolerance;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.LocalText;
import org.sagwise.text.Texts;

/**
 * What a wound coil comes to, in words: the same lines in window, command line and picture.
 *
 * @param format how numbers are printed
 */
public record WoundWords(QuantityFormat format) {

    private static final double M_PER_MM = 1e-3;
    private static final double MW_PER_W = 1e-3;
    private static final double MM2_PER_M2 = 1e6;
    private static final double WHOLE = 1e-9;

    /**
     * A quantity.
     *
     * @param key what it is, as in {@code ohm}
     * @param label the same for people
     * @param value with its unit
     */
    public record Row(String key, String label, String value) {}

    /** Every quantity, in the order in which a person winds and then fires. */
    public List<Row> rows(WoundCoil coil) {
        CoilWinding winding = coil.winding();
        List<Row> rows = new ArrayList<>();
        row(rows, "wire", wire(winding));
        row(rows, "wraps", wraps(winding.wraps()));
        row(rows, "length", format.print(winding.lengthM(), Unit.METRE));
        row(rows, "width", format.print(winding.widthMm() * M_PER_MM, Unit.METRE));
        row(rows, "mass", format.print(winding.massKg(), Unit.KILOGRAM));
        row(rows, "ohm", format.print(coil.ohm(), Unit.OHM));
        row(rows, "spread", spread(coil.ohmSpread()));
        row(rows, "glowing-ohm", format.print(coil.glowingOhm(), Unit.OHM));
        row(rows, "power", say("power.value", watts(coil.powerW()), format.print(coil.volts(), Unit.VOLT)));
        row(rows, "glowing-power", watts(coil.glowingW()));
        row(
                rows,
                "surface",
                format.print(coil.surfaceLoadMwPerMm2() * MW_PER_W * MM2_PER_M2, Unit.WATT_PER_SQUARE_METRE));
        double glows = coil.glowsAfterS();
        row(rows, "glows", Double.isInfinite(glows) ? say("never") : format.print(glows, Unit.SECOND));
        row(rows, "steady", coil.melts() ? say("melts") : format.print(coil.steadyC(), Unit.CELSIUS));
        return rows;
    }

    private void row(List<Row> rows, String key, String value) {
        rows.add(new Row(key, say("row." + key), value));
    }

    private String watts(double watts) {
        return format.print(watts, Unit.WATT);
    }

    private String spread(Band spread) {
        return say("from-to", format.print(spread.from(), Unit.OHM), format.print(spread.to(), Unit.OHM));
    }

    /** The wire with alloy, gauge and strands. */
    public String wire(CoilWinding winding) {
        String alloy = winding.wire().alloy().card().title().in(format.locale());
        int strands = winding.wire().strands();
        return say(strands == 1 ? "wire.one" : "wire.several", alloy, size(winding), strands);
    }

    private String size(CoilWinding winding) {
        double diameterM = winding.wire().diameterM();
        Gauge near = Gauge.nearest(diameterM);
        String mm = format.print(diameterM, Unit.METRE);
        boolean exact = Math.abs(near.diameterM() - diameterM) < WHOLE;
        return exact ? say("size.gauge", near.label(), mm) : mm;
    }

    /** So many wraps; broken ones with two decimals at most. */
    public String wraps(double wraps) {
        return format.number(wraps, Digits.atMostDecimals(2));
    }

    /** What came of a search for whole wraps, in a sentence. */
    public String found(WholeWraps.Answer.Found found, double wantedOhm) {
        List<String> beside = found.beside().stream()
                .map(other -> say("beside", wraps(other.wraps()), format.print(other.ohm(), Unit.OHM)))
                .toList();
        return say(
                "found",
                format.print(wantedOhm, Unit.OHM),
                wraps(found.exactly()),
                wraps(found.nearest().wraps()),
                format.print(found.nearest().ohm(), Unit.OHM),
                String.join(say("beside.and"), beside));
    }

    /** Why there is no such coil, and what to change. */
    public String refused(WholeWraps.Answer answer, double wantedOhm) {
        String wanted = format.print(wantedOhm, Unit.OHM);
        if (answer instanceof WholeWraps.Answer.TooFewOhms few) {
            return say("too-few", wanted, format.print(few.leastOhm(), Unit.OHM));
        }
        double wraps = ((WholeWraps.Answer.TooManyWraps) answer).wraps();
        return say("too-many", wanted, format.number(wraps, Digits.decimals(0)), WholeWraps.MOST);
    }

    /** What a person should know who winds it: where the spread is from, dry and wet, melting. */
    public List<String> notes(WoundCoil coil) {
        Alloy alloy = coil.winding().wire().alloy();
        List<String> notes = new ArrayList<>();
        if (coil.melts()) {
            notes.add(say("note.melts", format.print(alloy.meltingC(), Unit.CELSIUS)));
        }
        notes.add(spreadNote(alloy, coil.winding().wire().diameterM()));
        notes.add(say("note.dry", format.print(WoundCoil.GLOW_C, Unit.CELSIUS)));
        notes.add(say("note.measure"));
        return notes;
    }

    private String spreadNote(Alloy alloy, double diameterM) {
        String within = format.print(WireTolerance.withinM(diameterM), Unit.METRE);
        Optional<LocalText> source = alloy.card().source("resistivity_spread_uohm_m");
        if (alloy.spreadOhmM().isEmpty()) {
            return say("note.spread-diameter", within);
        }
        double share = alloy.spreadOhmM().getAsDouble() / alloy.resistivityOhmM();
        return say(
                "note.spread",
                format.print(share, Unit.FRACTION),
                within,
                source.map(text -> text.in(format.locale()).replaceFirst("\\.$", ""))
                        .orElse(""));
    }

    private String say(String key, Object... words) {
        return Texts.in("plan", format.locale()).say("wind." + key, words);
    }
}
