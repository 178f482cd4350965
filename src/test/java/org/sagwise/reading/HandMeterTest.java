package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.touch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.reading.MeterDisplay.Amps;
import org.sagwise.reading.MeterDisplay.Ohms;
import org.sagwise.reading.MeterDisplay.Place;
import org.sagwise.reading.MeterDisplay.Refused;
import org.sagwise.reading.MeterDisplay.Why;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.MeterInLine;

/** What the meter in the hand shows, and where it refuses. */
class HandMeterTest {

    private static final double EXACT = 1e-9;

    private static Part resistor(String id, double ohm) {
        return Part.of(id, PartKind.RESISTOR, "ohm", ohm);
    }

    private static Part supply(double volts) {
        return Part.of("supply", PartKind.SUPPLY, "volts", volts, "internal_ohm", 0);
    }

    private static Part button() {
        return Part.of("fire", PartKind.SWITCH, "closed_mohm", 3);
    }

    private static Scenario probed(Scenario bench, MeterMode mode, String red, String black) {
        return bench.withProbes(Optional.of(Probes.of(
                        TerminalRef.parse(red).orElseThrow(),
                        TerminalRef.parse(black).orElseThrow())
                .turnedTo(mode)));
    }

    private static MeterDisplay display(Scenario bench, MeterMode mode, String red, String black) {
        return Bench.of(probed(bench, mode, red, black), NOTHING)
                .now()
                .probes()
                .orElseThrow()
                .display();
    }

    private static double ohms(Scenario bench, String red, String black) {
        return assertInstanceOf(Ohms.class, display(bench, MeterMode.OHMS, red, black))
                .ohm();
    }

    private static Amps amps(Scenario bench, String red, String black) {
        return assertInstanceOf(Amps.class, display(bench, MeterMode.AMPS, red, black));
    }

    private static Refused refused(Scenario bench, MeterMode mode, String red, String black) {
        return assertInstanceOf(Refused.class, display(bench, mode, red, black));
    }

    /** OpenStax, University Physics Volume 2, Example 10.4: 1.00 Ω before 6.00 Ω beside 13.0 Ω. */
    private static List<Link> published(List<Link> more) {
        List<Link> links =
                new ArrayList<>(List.of(ideal("R1.2", "R2.1"), ideal("R2.1", "R3.1"), ideal("R2.2", "R3.2")));
        links.addAll(more);
        return links;
    }

    private static List<Part> publishedParts(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(resistor("R1", 1), resistor("R2", 6), resistor("R3", 13)));
        parts.addAll(List.of(more));
        return parts;
    }

    /** One cell, a button, a coil; contacts of 10, 10 and 5 mΩ. */
    private static Scenario ring(double coilOhm) {
        return Scenario.of(
                "",
                List.of(cell("A", 4.14, 30), button(), coil(coilOhm)),
                List.of(touch("A.+", "fire.1", 10), touch("fire.2", "coil.1", 10), touch("coil.2", "A.-", 5)));
    }

    private static Scenario without(Scenario bench, int link) {
        List<Link> links = new ArrayList<>(bench.links());
        links.remove(link);
        return bench.withLinks(links);
    }

    /** The example prints 5.10 Ω, its sister in College Physics 5.11 Ω; exactly it is 97/19. */
    @Test
    void ohms_publishedSeriesAndParallel_areThoseOfTheExample() {
        Scenario bench = Scenario.of("", publishedParts(), published(List.of()));
        double ohm = ohms(bench, "R1.1", "R3.2");
        assertEquals(5.10, ohm, 0.01);
        assertEquals(97.0 / 19, ohm, EXACT);
        assertEquals(97.0 / 19, ohms(bench, "R3.2", "R1.1"), EXACT);
    }

    /** The same example prints 2.35 A at 12.0 V. */
    @Test
    void amps_publishedSeriesAndParallel_areThoseOfTheExample() {
        Scenario bench = Scenario.of(
                "",
                publishedParts(supply(12)),
                published(List.of(ideal("supply.+", "R1.1"), ideal("R2.2", "supply.-"))));
        Amps amps = amps(bench, "supply.+", "R1.1");
        assertEquals(2.35, amps.currentA(), 0.005);
        assertEquals(12 / (97.0 / 19 + 0.010), amps.currentA(), EXACT);
        assertEquals(Place.JOINT, amps.place());
        assertEquals(-amps.currentA(), amps(bench, "R1.1", "supply.+").currentA(), EXACT);
    }

    /**
     * OpenStax, College Physics, section 21.4: an ammeter of 0.0200 Ω before 10.00 Ω makes 10.02 Ω.
     * Ours has 10 mΩ; a joint has the other ten.
     */
    @Test
    void amps_publishedInsertion_countsTheMetersOwnResistance() {
        Scenario bench = Scenario.of(
                "",
                List.of(supply(10.02), resistor("R", 10)),
                List.of(touch("supply.+", "R.1", 10), ideal("R.2", "supply.-")));
        assertEquals(1.0, amps(bench, "R.2", "supply.-").currentA(), EXACT);
    }

    /**
     * Kuphaldt, Lessons in Electric Circuits I, "Voltmeter impact on measured circuit": 24 V over
     * two of 250 MΩ; the meter's 10 MΩ bring the lower one down to 9.615 MΩ.
     */
    @Test
    void volts_publishedDivider_areLoadedByTheMeter() {
        Scenario bench = Scenario.of(
                "",
                List.of(supply(24), resistor("up", 250e6), resistor("low", 250e6)),
                List.of(ideal("supply.+", "up.1"), ideal("up.2", "low.1"), ideal("low.2", "supply.-")));
        Readings readings = Bench.of(probed(bench, MeterMode.VOLTS, "low.1", "low.2"), NOTHING)
                .now();
        double lowerOhm = 9.615e6;
        assertEquals(
                24 * lowerOhm / (250e6 + lowerOhm),
                readings.probes().orElseThrow().voltsV(),
                0.0001);
        assertEquals(12, readings.part("low").orElseThrow().voltsV(), EXACT);
    }

    /** Rest, under load at the cell, under load at the coil. */
    @Test
    void volts_benchCheck_goStepByStep() {
        Scenario bench = ring(0.30);
        double currentA = 4.14 / (0.030 + 0.010 + 0.003 + 0.010 + 0.30 + 0.005);
        assertEquals(4.14, volts(bench, "A.+", "A.-"), 1e-6);
        assertEquals(4.14 - 0.030 * currentA, volts(bench.pressed(), "A.+", "A.-"), 1e-6);
        assertEquals(0.30 * currentA, volts(bench.pressed(), "coil.1", "coil.2"), 1e-6);
    }

    private static double volts(Scenario bench, String red, String black) {
        return Bench.of(probed(bench, MeterMode.VOLTS, red, black), NOTHING)
                .now()
                .probes()
                .orElseThrow()
                .voltsV();
    }

    @Test
    void volts_pointsThatNothingJoins_areNone() {
        Scenario bench = Scenario.of("", List.of(cell("A", 4, 30), coil(1)), List.of());
        assertEquals(Double.NaN, volts(bench, "A.+", "coil.1"));
        assertEquals(0, volts(bench, "A.+", "A.+"));
    }

    @Test
    void amps_atAJoint_takeItsPlace() {
        double aroundOhm = 0.030 + 0.010 + 0.003 + 0.010 + 0.30 + 0.005 + 0.010;
        Amps held = amps(ring(0.30).pressed(), "coil.2", "A.-");
        assertEquals(4.14 / aroundOhm, held.currentA(), EXACT);
        assertEquals(Place.JOINT, held.place());
        assertEquals(0, amps(ring(0.30), "coil.2", "A.-").currentA(), EXACT);
    }

    @Test
    void amps_inAGap_closeIt() {
        Amps held = amps(without(ring(0.30), 2).pressed(), "coil.2", "A.-");
        assertEquals(4.14 / 0.363, held.currentA(), EXACT);
        assertEquals(Place.GAP, held.place());
    }

    @Test
    void amps_acrossACell_areRefusedAsAShort() {
        Refused refused = refused(ring(1), MeterMode.AMPS, "A.+", "A.-");
        assertEquals(Why.SHORT, refused.why());
        assertEquals("A", refused.part());
        assertEquals(4.14 / 0.040, refused.currentA(), 1e-6);
    }

    @Test
    void amps_acrossACoilWithTheButtonOpen_areRefusedAllTheSame() {
        Refused refused = refused(ring(1), MeterMode.AMPS, "coil.1", "coil.2");
        assertEquals(Why.PAST_LOAD, refused.why());
        assertEquals("coil", refused.part());
    }

    @Test
    void amps_inLineWithMoreThanTheFuse_areRefused() {
        Refused refused = refused(ring(0.1), MeterMode.AMPS, "coil.2", "A.-");
        assertEquals(Why.ABOVE_FUSE, refused.why());
        assertEquals(4.14 / 0.168, refused.currentA(), 1e-6);
    }

    @Test
    void amps_onOnePointOrBesideJoints_areRefused() {
        Scenario bench = ring(1).plus(ideal("fire.2", "aside.1")).plus(resistor("aside", 5));
        Scenario round = bench.plus(ideal("aside.1", "coil.1"));
        assertEquals(
                Why.ONE_POINT, refused(ring(1), MeterMode.AMPS, "A.-", "A.can").why());
        assertEquals(
                Why.JOINED_ANYWAY,
                refused(round, MeterMode.AMPS, "fire.2", "coil.1").why());
    }

    @Test
    void ohms_inARing_areRefusedAlthoughTheButtonIsOpen() {
        Refused refused = refused(ring(1), MeterMode.OHMS, "coil.1", "coil.2");
        assertEquals(Why.ALIVE, refused.why());
        assertEquals("A", refused.part());
    }

    @Test
    void ohms_acrossACell_areRefused() {
        Scenario bench = Scenario.of("", List.of(cell("A", 0, 30)), List.of());
        assertEquals(Why.ALIVE, refused(bench, MeterMode.OHMS, "A.+", "A.-").why());
    }

    /** Common practice: take the cell out, or free one end of what is measured. */
    @Test
    void ohms_withOneEndFree_areThoseOfTheCoil() {
        assertEquals(0.30, ohms(without(ring(0.30), 2), "coil.1", "coil.2"), EXACT);
    }

    @Test
    void ohms_acrossTheButtonOfADeadRing_followTheButton() {
        Scenario bench = Scenario.of("", List.of(button(), coil(1)), List.of(ideal("fire.2", "coil.1")));
        assertEquals(Double.POSITIVE_INFINITY, ohms(bench, "fire.1", "coil.2"));
        assertEquals(1.003, ohms(bench.pressed(), "fire.1", "coil.2"), EXACT);
        assertEquals(0, ohms(bench, "fire.2", "coil.1"), EXACT);
        assertEquals(0, ohms(bench, "fire.2", "fire.2"));
    }

    @Test
    void amps_atAJoint_areThoseOfTheMeterThatIsPutThere() {
        Scenario bench = probed(ring(0.30).pressed(), MeterMode.AMPS, "coil.2", "A.-");
        MeterDisplay display =
                Bench.of(bench, NOTHING).now().probes().orElseThrow().display();
        Amps amps = assertInstanceOf(Amps.class, display);
        for (Scenario probed : List.of(bench, probed(bench, MeterMode.AMPS, "A.-", "coil.2"))) {
            Scenario inLine = new MeterInLine(amps.joint().orElseThrow()).apply(probed);
            double panelA =
                    Bench.of(inLine, NOTHING).now().part("meter").orElseThrow().currentA();
            assertEquals(Optional.empty(), inLine.probes());
            assertEquals(4, inLine.links().size());
            assertEquals(amps.currentA(), Math.abs(panelA), EXACT);
            assertEquals(probed == bench, panelA > 0);
        }
    }

    private static MeterDisplay panel(Scenario bench, String one, String other) {
        Scenario measured = bench.plus(Part.of("panel", PartKind.METER, "mode", "ohms"))
                .plus(ideal("panel.red", one))
                .plus(ideal("panel.black", other));
        return Bench.of(measured, NOTHING).now().ohmmeters().get("panel");
    }

    @Test
    void ohms_ofAMeterAmongTheParts_areThoseOfTheMeterInTheHand() {
        Scenario dead = Scenario.of("", publishedParts(), published(List.of()));
        Ohms ohms = assertInstanceOf(Ohms.class, panel(dead, "R1.1", "R3.2"));
        assertEquals(97.0 / 19, ohms.ohm(), EXACT);
        Refused refused = assertInstanceOf(Refused.class, panel(ring(1), "coil.1", "coil.2"));
        assertEquals(Why.ALIVE, refused.why());
    }
}
