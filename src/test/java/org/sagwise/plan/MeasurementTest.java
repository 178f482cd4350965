package org.sagwise.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.text.Texts;

/** From a meter's readings to internal and path resistance, with uncertainty. */
class MeasurementTest {

    /** Readings of a bench check, to be worked out by hand: common practice, no source. */
    private static final MeterCheck CHECK = new MeterCheck(4.14, 3.80, 3.38, 0.30, 0.01, 0.01);

    private static Measured measured(MeterCheck check) {
        return assertInstanceOf(Measurement.Answer.Agreed.class, Measurement.of(check))
                .measured();
    }

    /** By hand: I = 3.38/0.30 = 11.27 A; 0.34 V / 11.27 A = 30.2 mΩ; 0.42 V / 11.27 A = 37.3 mΩ. */
    @Test
    void of_benchCheck_isWhatFollowsByHand() {
        Measured found = measured(CHECK);
        assertEquals(11.2667, found.currentA().value(), 1e-4);
        assertEquals(30.178e-3, found.internalOhm().value(), 1e-6);
        assertEquals(37.278e-3, found.pathOhm().value(), 1e-6);
        assertEquals(0.34, found.sagV(), 1e-12);
        assertEquals(0.42, found.dropV(), 1e-12);
        assertEquals(38.08, found.powerW(), 0.01);
    }

    /**
     * Monte Carlo as in JCGM 101:2008 (propagation of distributions): every reading anywhere within
     * half a step, uniformly; the spread of the results is the standard uncertainty.
     */
    @Test
    void of_benchCheck_uncertaintyIsThatOfMonteCarlo() {
        int trials = 200_000;
        Random random = new Random(20_11);
        double[] internal = new double[trials];
        double[] path = new double[trials];
        double[] current = new double[trials];
        for (int i = 0; i < trials; i++) {
            double rest = 4.14 + 0.01 * (random.nextDouble() - 0.5);
            double cell = 3.80 + 0.01 * (random.nextDouble() - 0.5);
            double coil = 3.38 + 0.01 * (random.nextDouble() - 0.5);
            double ohm = 0.30 + 0.01 * (random.nextDouble() - 0.5);
            current[i] = coil / ohm;
            internal[i] = (rest - cell) / current[i];
            path[i] = (cell - coil) / current[i];
        }
        Measured found = measured(CHECK);
        assertEquals(1, found.internalOhm().standard() / spread(internal), 0.01);
        assertEquals(1, found.pathOhm().standard() / spread(path), 0.01);
        assertEquals(1, found.currentA().standard() / spread(current), 0.01);
    }

    private static double spread(double[] values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / (values.length - 1));
    }

    @Test
    void scenario_ofReadings_givesThemBack() {
        Readings readings = Bench.of(measured(CHECK).scenario("check", 2500, 20), CatalogueLoader.builtIn())
                .fired();
        assertEquals(4.14, readings.cells().get(0).restV(), 1e-9);
        assertEquals(3.80, readings.cells().get(0).terminalV(), 1e-5);
        assertEquals(3.38, readings.coils().get(0).voltsV(), 1e-5);
        assertEquals(3.80, readings.probes().orElseThrow().voltsV(), 1e-5);
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, -0.2, -0.3, 0.3, REST_NOT_POSITIVE COIL_NOT_POSITIVE",
        "8.2, 7.9, 7.5, 1, REST_TOO_HIGH",
        "3.80, 4.14, 3.38, 0.3, CELL_ABOVE_REST",
        "4.14, 3.38, 3.80, 0.3, COIL_ABOVE_CELL",
        "4.14, 4.14, 0, 0.3, COIL_NOT_POSITIVE",
        "4.14, 3.80, 3.38, 0, OHM_NOT_POSITIVE",
        "3, 4, 5, -1, CELL_ABOVE_REST COIL_ABOVE_CELL OHM_NOT_POSITIVE",
    })
    void of_contradictoryReadings_areRefusedWithEveryReason(
            double rest, double cell, double coil, double ohm, String expected) {
        var refused = assertInstanceOf(
                Measurement.Answer.Refused.class, Measurement.of(new MeterCheck(rest, cell, coil, ohm, 0.01, 0.01)));
        List<String> names = refused.contradictions().stream().map(Enum::name).toList();
        assertEquals(expected, String.join(" ", names));
    }

    @Test
    void of_readingsWithinAStep_countAsEqual() {
        Measured found = measured(new MeterCheck(4.14, 4.15, 4.15, 3.0, 0.01, 0.01));
        assertEquals(0, found.internalOhm().value());
        assertFalse(found.internalOhm().isResolved());
        assertEquals(Measured.Advice.MORE_CURRENT, found.advice());
    }

    @Test
    void advice_namesTheWeakestReading() {
        assertEquals(Measured.Advice.FINER_VOLTS, measured(CHECK).advice());
        MeterCheck fine = new MeterCheck(4.14, 3.80, 3.38, 0.30, 0.001, 0.01);
        assertEquals(Measured.Advice.FINER_OHMS, measured(fine).advice());
        double whole =
                measured(CHECK).blame().values().stream().mapToDouble(v -> v).sum();
        assertEquals(1, whole, 1e-12);
    }

    @Test
    void texts_everyContradictionAndAdvice_areThere() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Texts texts = Texts.in("plan", locale);
            for (Enum<?> each : Measurement.Contradiction.values()) {
                texts.say("contradiction." + key(each), "1", "2", "3", "4");
            }
            for (Enum<?> each : Measured.Advice.values()) {
                texts.say("advice." + key(each));
            }
        }
    }

    private static String key(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
