package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;

/**
 * Runs of a 3.0 Ah NMC 18650 against the open data of the Battery Testing Consortium, Oxford
 * Brookes University, 2021–22, from which the numbers were worked out: capacities from the
 * constant-current test at 25 °C down to 2.5 V, resistances from its pulse test.
 */
class PublishedCellTest {

    /**
     * A climate chamber moves its air: 50 W/(m²·K) instead of 10 (forced air: 20 to 100, from
     * memory, no source at hand).
     */
    private static final RunSettings CHAMBER = RunSettings.USUAL.with(new Spread(1, 1, 5, 0));

    /** 22 mΩ: two-second pulses of 0.25 C at 25 °C between 3.56 and 4.02 V, same data. */
    private static Part cell(double restV) {
        return Part.of(
                "A",
                PartKind.CELL,
                "rest_V",
                restV,
                "internal_mohm",
                22,
                "capacity_mAh",
                3000,
                "limit_A",
                20,
                "chemistry",
                "NCR",
                "cutoff_V",
                2.5);
    }

    @ParameterizedTest
    @CsvSource({"3.87, 2.941", "7.74, 2.912", "11.60, 2.892", "15.47, 2.870", "19.34, 2.843"})
    void run_constantCurrent_givesThePublishedCapacity(double ampere, double ampereHours) {
        RunResult result =
                Runner.run(ElectronicLoad.on(cell(4.2), ampere, 25), RunPlan.held(), CHAMBER, RunProgress.NONE);

        assertEquals(RunEnd.CUTOFF, result.end());
        double given = ampere * result.last().timeS() / 3600;
        assertEquals(ampereHours, given, 0.03 * ampereHours);
    }

    @ParameterizedTest
    @CsvSource({"5, 44.0", "15, 32.6", "25, 28.4", "35, 24.2", "45, 22.6"})
    void run_tenSecondPulse_showsThePublishedResistance(double ambientC, double mohm) {
        double ampere = 9;
        Bench bench = ElectronicLoad.on(cell(3.7), ampere, ambientC);
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        RunState end = stepper.advance(stepper.start(), Press.HELD, 10).state();

        double fallV = 3.7 - end.cells().get(0).terminalV();

        assertEquals(mohm, fallV / ampere * 1000, 0.10 * mohm);
    }

    /**
     * A 3.0 Ah cell rated for 20 A (data sheet of such a cell: to 75 °C at the surface, no more) is
     * rated in moving air: there it keeps below its vent; in still air its own heat takes it there.
     */
    @ParameterizedTest
    @CsvSource({"moving-air, CUTOFF", "still-air, VENTED", "tube, VENTED"})
    void run_ratedCurrent_ventsOnlyWhereTheAirStandsStill(String cooling, RunEnd end) {
        Part rated = cell(4.2).with("internal_mohm", 25).with("cooling", cooling);

        RunResult result =
                Runner.run(ElectronicLoad.on(rated, 20, 25), RunPlan.held(), RunSettings.USUAL, RunProgress.NONE);

        assertEquals(end, result.end());
    }

    /** Energy of the same test, same data: Wh at each current, within 2 %. */
    @ParameterizedTest
    @CsvSource({"3.87, 10.47", "7.74, 10.05", "11.60, 9.73", "15.47, 9.44", "19.34, 9.15"})
    void run_constantCurrent_givesThePublishedEnergy(double ampere, double wattHours) {
        RunResult result =
                Runner.run(ElectronicLoad.on(cell(4.2), ampere, 25), RunPlan.held(), CHAMBER, RunProgress.NONE);
        EnergyBook book = result.last().energy();

        assertEquals(wattHours, (book.givenJ() - book.cellHeatJ()) / 3600, 0.02 * wattHours);
    }

    /** Whatever flows out is booked: the load draws exactly its current. */
    @ParameterizedTest
    @CsvSource({"3.0", "9.0"})
    void run_constantCurrent_takesItsChargeExactly(double ampere) {
        Bench bench = ElectronicLoad.on(cell(4.0), ampere, 25);
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        double before = bench.cells().get("A").start().charge();
        RunState end = stepper.advance(stepper.start(), Press.HELD, 600).state();

        assertEquals(ampere * 600 / 3600 / 3.0, before - end.cells().get(0).charge(), 1e-9);
        assertEquals(Circuits.NOTHING, bench.catalogue());
    }
}
