package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * The PTC and the current interrupter (CID) inside ordinary cells. NASA NESC Technical Bulletin
 * 09-02 (as excerpted): most commercial 18650 have both; the PTC guards a single cell in an external
 * short, the CID in overcharge; in packs of several cells in series they do not always. No numbers
 * stand there, so these tests hold what it says happens.
 */
class CellDevicesTest {

    private static Part cell(String id, String model) {
        return Part.of(id, PartKind.CELL, "model", model, "charge", 1.0);
    }

    private static Bench shorted(double ohm, Part... row) {
        List<Part> parts = new ArrayList<>(List.of(row));
        parts.add(Part.of("metal", PartKind.RESISTOR, "ohm", ohm));
        List<Link> links = new ArrayList<>();
        IntStream.range(1, row.length)
                .forEach(k -> links.add(Circuits.ideal(row[k - 1].id() + ".-", row[k].id() + ".+")));
        links.add(Circuits.ideal(row[0].id() + ".+", "metal.1"));
        links.add(Circuits.ideal("metal.2", row[row.length - 1].id() + ".-"));
        return Bench.of(Scenario.of("Short", parts, links), CatalogueLoader.builtIn());
    }

    private static RunResult hour(Bench bench) {
        return Runner.run(bench, RunPlan.held().until(3600));
    }

    @Test
    void ptc_singleOrdinaryCellShorted_holdsTheCurrentDownAndNothingVents() {
        RunResult run = hour(shorted(0.005, cell("A", "icr18650-2600-5A")));

        assertEquals(1, run.events(Kind.CELL_PTC_TRIPPED).size());
        // Within seconds, and below 1 A from then on (from memory of such tests).
        assertTrue(run.events(Kind.CELL_PTC_TRIPPED).get(0).atS() < 5);
        CellMoment end = run.last().cells().get(0);
        assertTrue(end.currentA() > 0.05 && end.currentA() < 1, () -> end.currentA() + " A");
        assertTrue(end.peakC() < 80, () -> end.peakC() + " °C");
        assertEquals(RunEnd.TIME, run.end());
    }

    /** High-drain cells usually have none. */
    @Test
    void ptc_withoutOne_theSameShortVents() {
        RunResult run = hour(shorted(0.005, cell("A", "icr18650-2600-5A").with("ptc", false)));

        assertEquals(RunEnd.VENTED, run.end());
        assertTrue(CatalogueLoader.builtIn().models(PartKind.CELL).all().stream()
                .filter(model -> model.values().flag("ptc"))
                .allMatch(model ->
                        model.values().need("limit_A") < 5 * model.values().milli("capacity_mAh")));
    }

    @Test
    void ptc_rowOfTwoShorted_isNoProtection() {
        RunResult run = hour(shorted(0.005, cell("A", "icr18650-2600-5A"), cell("B", "icr18650-2600-5A")));

        assertFalse(run.events(Kind.CELL_PTC_FAILED).isEmpty());
        assertEquals(8.4, run.events(Kind.CELL_PTC_FAILED).get(0).measured(), 0.01);
        assertEquals(RunEnd.VENTED, run.end());
    }

    /** Side by side each has the volts of one cell across it. */
    @Test
    void ptc_pairSideBySideShorted_eachTrips() {
        List<Part> parts = List.of(
                cell("A", "icr18650-2600-5A"),
                cell("B", "icr18650-2600-5A"),
                Part.of("metal", PartKind.RESISTOR, "ohm", 0.005));
        Bench bench = Bench.of(
                Scenario.of(
                        "Short",
                        parts,
                        List.of(
                                Circuits.touch("A.+", "metal.1", 2),
                                Circuits.touch("B.+", "metal.1", 2),
                                Circuits.touch("A.-", "metal.2", 2),
                                Circuits.touch("B.-", "metal.2", 2))),
                CatalogueLoader.builtIn());

        assertEquals(2, hour(bench).events(Kind.CELL_PTC_TRIPPED).size());
    }

    /** At its limit a cell is used for ever: the PTC must hold that, in still air and warm. */
    @Test
    void ptc_cellAtItsLimit_doesNotTrip() {
        Bench bench = ElectronicLoad.on(
                Part.of(
                        "A",
                        PartKind.CELL,
                        "rest_V",
                        4.2,
                        "internal_mohm",
                        65,
                        "capacity_mAh",
                        2600,
                        "limit_A",
                        5,
                        "chemistry",
                        "ICR",
                        "ptc",
                        true),
                5,
                25);

        RunResult run = Runner.run(bench, RunPlan.held(), RunSettings.USUAL, RunProgress.NONE);
        assertEquals(RunEnd.CUTOFF, run.end());
        assertTrue(run.last().timeS() > 1200);
    }

    /** What the cell gives and what arrives must balance while the PTC is at its steepest. */
    @Test
    void ptc_whileItTrips_theAccountOfEnergyBalances() {
        EnergyBook book =
                hour(shorted(0.05, cell("A", "ncr18650-3500-10A"))).last().energy();

        double arrivedJ = book.deliveredJ() + book.cellHeatJ() + book.pathHeatJ();
        assertEquals(book.givenJ(), arrivedJ, 1e-6 * book.givenJ());
    }

    @Test
    void cid_overcharged_opensForGoodAndTheChargerFindsNothing() {
        Part charger = Part.of("charger", PartKind.CHARGER, "current_A", 2.6, "limit_V", 5.0);
        List<Link> links = List.of(Circuits.touch("charger.+", "A.+", 5), Circuits.touch("charger.-", "A.-", 5));
        Part known = cell("A", "icr18650-2600-5A");
        RunResult run = Runner.run(
                Bench.of(Scenario.of("Charge", List.of(known, charger), links), CatalogueLoader.builtIn()),
                RunPlan.USUAL.until(7200));

        assertEquals(1, run.events(Kind.CID_OPENED).size());
        CellMoment end = run.last().cells().get(0);
        assertEquals(0, end.currentA());
        assertEquals(1.3, end.charge(), 0.01);
        assertEquals(RunEnd.TIME, run.end());

        RunResult unknown = Runner.run(
                Bench.of(
                        Scenario.of("Charge", List.of(known.with("cid", false), charger), links),
                        CatalogueLoader.builtIn()),
                RunPlan.USUAL.until(7200));
        assertEquals(RunEnd.INTERRUPTED, unknown.end());
    }
}
