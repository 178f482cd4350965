package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.reading.PartReading;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** A resettable fuse holds, trips, stays hot while driven, cools and comes back. */
class PtcRunTest {

    private static final double SUPPLY_OHM = 1e-6;

    /** A supply that drives so many amps through a cold resettable fuse at first, at 16 V, in air of 23 °C. */
    private static Bench driven(String model, double amps, double coldOhm) {
        double ohm = 16 / amps - coldOhm - SUPPLY_OHM;
        Scenario scenario = Scenario.of(
                "Driven",
                List.of(
                        Part.of("S", PartKind.SUPPLY, "volts", 16, "internal_ohm", SUPPLY_OHM),
                        Part.of("fire", PartKind.SWITCH, "closed_mohm", 0),
                        Part.of("F", PartKind.PTC, "model", model),
                        Part.of("R", PartKind.RESISTOR, "ohm", ohm)),
                List.of(
                        Circuits.ideal("S.+", "fire.1"),
                        Circuits.ideal("fire.2", "F.1"),
                        Circuits.ideal("F.2", "R.1"),
                        Circuits.ideal("R.2", "S.-")));
        return Bench.of(scenario.withAmbientC(23), CatalogueLoader.builtIn());
    }

    private static RunResult held(Bench bench, double seconds) {
        return Runner.run(bench, RunPlan.held().until(seconds));
    }

    private static PartReading reading(Bench bench, RunState state) {
        return bench.at(state.states(), state.press()).part("F").orElseThrow();
    }

    /**
     * Times are the longest of the data sheet named in the catalogue. The heat that is lost on the way makes the model up
     * to a tenth slower.
     */
    @ParameterizedTest
    @CsvSource({"ptc-5A, 5, 0.038, 3.6", "ptc-9A, 9, 0.017, 12", "ptc-14A, 14, 0.008, 20"})
    void run_fiveTimesTheHeldCurrent_tripsInTheTimeOfTheDataSheet(
            String model, double holdA, double ohm, double sheetS) {
        RunEvent tripped =
                held(driven(model, 5 * holdA, ohm), 60).events(Kind.PTC_TRIPPED).get(0);

        assertEquals(sheetS, tripped.atS(), 0.1 * sheetS);
    }

    @ParameterizedTest
    @CsvSource({"ptc-5A, 5, 0.038, 3.0", "ptc-9A, 9, 0.017, 3.8", "ptc-14A, 14, 0.008, 4.8"})
    void run_atHeldAndTripCurrent_holdsAndTripsAndTakesThePowerOfTheDataSheet(
            String model, double holdA, double ohm, double sheetW) {
        Bench holding = driven(model, holdA, ohm);
        assertEquals(List.of(), held(holding, 3 * 3600).events());

        Bench tripping = driven(model, 2 * holdA, ohm);
        RunResult result = held(tripping, 3600);
        assertEquals(1, result.events().size());
        assertEquals(Kind.PTC_TRIPPED, result.events().get(0).kind());
        assertEquals(sheetW, Math.abs(reading(tripping, result.last()).powerW()), 0.12 * sheetW);
    }

    @Test
    void advance_trippedThenLetGo_resetsAndTripsAgain() {
        Bench bench = driven("ptc-5A", 25, 0.038);
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        RunState state = stepper.start();
        assertFalse(state.has(Kind.PTC_TRIPPED));

        Advance first = stepper.advance(state, Press.HELD, 60);
        assertEquals(
                List.of(Kind.PTC_TRIPPED),
                first.events().stream().map(RunEvent::kind).toList());
        assertTrue(first.state().has(Kind.PTC_TRIPPED));
        assertTrue(Math.abs(reading(bench, first.state()).currentA()) < 1);

        Advance rest = stepper.advance(first.state(), Press.RELEASED, 120);
        assertEquals(
                List.of(Kind.PTC_RESET),
                rest.events().stream().map(RunEvent::kind).toList());
        assertFalse(rest.state().has(Kind.PTC_TRIPPED));

        Advance again = stepper.advance(rest.state(), Press.HELD, 60);
        assertEquals(
                List.of(Kind.PTC_TRIPPED),
                again.events().stream().map(RunEvent::kind).toList());
    }

    @Test
    void run_untilCutOff_endsWhenItTrips() {
        RunResult result = Runner.run(driven("ptc-5A", 25, 0.038), RunPlan.held());

        assertEquals(RunEnd.PTC, result.end());
    }

    @Property(tries = 60)
    void run_anyCurrentAndAir_balancesItsEnergy(
            @ForAll @DoubleRange(min = 0.05, max = 3) double coilOhm,
            @ForAll @DoubleRange(min = 0.5, max = 20) double holdA,
            @ForAll @DoubleRange(min = -20, max = 120) double airC) {
        Part ptc = Part.of("F", PartKind.PTC, "hold_A", holdA);
        Bench bench = Bench.of(
                Scenario.of(
                                "Random",
                                List.of(Circuits.cell("A", 4.2, 20), ptc, Circuits.coil(coilOhm)),
                                List.of(
                                        Circuits.ideal("A.+", "F.1"),
                                        Circuits.ideal("F.2", "coil.1"),
                                        Circuits.ideal("coil.2", "A.-")))
                        .withAmbientC(airC),
                Circuits.NOTHING);
        RunResult result = held(bench, 300);
        EnergyBook book = result.last().energy();

        assertTrue(Math.abs(book.missingJ()) <= 1e-6 * book.givenJ() + 1e-9, () -> "lacks " + book.missingJ());
        for (RunState state : result.trace().states()) {
            for (double number : state.x) {
                assertFalse(Double.isNaN(number));
            }
        }
        assertTrue(result.trace().states().size() < 8000);
    }
}
