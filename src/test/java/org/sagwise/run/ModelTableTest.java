package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;
import org.sagwise.part.FuseMelting;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.Gauge;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/**
 * The table of docs/model-notes.md: the model beside values from outside, the source in each row.
 * Made anew by {@code mvn test -Dtest=ModelTableTest -Dsagwise.write=true}.
 */
class ModelTableTest {

    private static final Path FILE = Path.of("docs/model-notes.md");
    private static final String BEGIN = "<!-- Made by ModelTableTest from here -->\n";
    private static final String END = "<!-- to here -->\n";

    private static final String OXFORD = "open data of the Battery Testing Consortium, Oxford Brookes University";
    private static final String SHEETS = "data sheets; nominal times";
    private static final String COPPER = "J. Electrochem. Soc. 165(9), A1639, 2018, abstract";
    private static final String PCOE = "open battery data of NASA's Prognostics Center of Excellence";

    /** So chosen that a charge with 1.5 A reaches 4.2 V after 57 min, as cell 5 does. */
    private static final double LAPTOP_MOHM = 78;

    private static final String WIRE = "table of a resistance-wire maker (Alloy 650)";

    private final List<String> rows = new ArrayList<>();

    private void row(String what, String outside, double model, String unit, double against, String source) {
        String off = Double.isNaN(against) ? "" : String.format(Locale.ROOT, "%+.0f %%", 100 * (model / against - 1));
        String shown = String.format(Locale.ROOT, model >= 100 ? "%.0f" : model >= 10 ? "%.1f" : "%.2f", model);
        rows.add("| " + String.join(" | ", what, outside + " " + unit, shown + " " + unit, off, source) + " |");
    }

    private static Part cell(String kind, double mohm, double mah) {
        return Part.of(
                "A",
                PartKind.CELL,
                "rest_V",
                4.2,
                "internal_mohm",
                mohm,
                "capacity_mAh",
                mah,
                "limit_A",
                20,
                "chemistry",
                kind,
                "cutoff_V",
                2.5);
    }

    private static RunResult emptied(Part cell, double ampere, double ambientC) {
        return Runner.run(
                ElectronicLoad.on(cell, ampere, ambientC), RunPlan.held(), RunSettings.USUAL, RunProgress.NONE);
    }

    private void energies() {
        double[][] published = {
            {3.87, 2.941, 10.47}, {7.74, 2.912, 10.05}, {11.60, 2.892, 9.73}, {15.47, 2.870, 9.44}, {19.34, 2.843, 9.15}
        };
        Part chamber = cell("NCR", 22, 3000).with("cooling", "moving-air");
        for (double[] row : published) {
            RunResult result = emptied(chamber, row[0], 25);
            EnergyBook book = result.last().energy();
            String what = " of a 3.0 Ah NMC 18650 at " + row[0] + " A";
            row("charge" + what, "" + row[1], row[0] * result.last().timeS() / 3600, "Ah", row[1], OXFORD);
            row("energy" + what, "" + row[2], (book.givenJ() - book.cellHeatJ()) / 3600, "Wh", row[2], OXFORD);
        }
        double[][] pulses = {{5, 44.0}, {15, 32.6}, {25, 28.4}, {35, 24.2}, {45, 22.6}};
        for (double[] pulse : pulses) {
            Bench bench = ElectronicLoad.on(cell("NCR", 22, 3000).with("rest_V", 3.7), 9, pulse[0]);
            Stepper stepper = new Stepper(bench, RunSettings.USUAL);
            RunState end = stepper.advance(stepper.start(), Press.HELD, 10).state();
            double mohm = (3.7 - end.cells().get(0).terminalV()) / 9 * 1000;
            row(
                    "resistance of it in ten seconds at " + (int) pulse[0] + " °C",
                    "" + pulse[1],
                    mohm,
                    "mΩ",
                    pulse[1],
                    OXFORD);
        }
    }

    private void cold() {
        Part cell = cell("INR", 20, 1500).with("cooling", "moving-air");
        double warm = emptied(cell, 10, 25).last().timeS();
        String source = "specification of cell INR18650-15L, 7.5: at least";
        row(
                "10 A from a 1.5 Ah cell at 0 °C, share of that at 25 °C",
                "80",
                100 * emptied(cell, 10, 0).last().timeS() / warm,
                "%",
                Double.NaN,
                source);
        row("the same at −20 °C", "60", 100 * emptied(cell, 10, -20).last().timeS() / warm, "%", Double.NaN, source);
        Part gentle = cell("INR", 20, 2500).with("cooling", "moving-air");
        double gentleWarm = emptied(gentle, 0.5, 25).last().timeS();
        String gauges = "gauge tables of four phone cells in public kernel sources";
        row(
                "a fifth of the capacity an hour at 0 °C, share of that at 25 °C",
                "87 to 93",
                100 * emptied(gentle, 0.5, 0).last().timeS() / gentleWarm,
                "%",
                Double.NaN,
                gauges);
        row(
                "the same at −10 °C",
                "68 to 89",
                100 * emptied(gentle, 0.5, -10).last().timeS() / gentleWarm,
                "%",
                Double.NaN,
                gauges);
        Part laptop = cell("ICR", LAPTOP_MOHM, 1900).with("cutoff_V", 2.7);
        Part chamber = laptop.with("cooling", "moving-air");
        row(
                "1 A from a 2 Ah 18650 at 4 °C, share of that at 24 °C",
                "90",
                100
                        * emptied(chamber, 1, 4).last().timeS()
                        / emptied(chamber, 1, 24).last().timeS(),
                "%",
                90,
                PCOE + ", cells 47 and 5");
        row(
                "surface of it after 2 A in a room of 24 °C",
                "39.0",
                emptied(laptop, 2, 24).last().cells().get(0).temperatureC(),
                "°C",
                39.0,
                PCOE + ", cell 5");
    }

    private void charging() {
        row("charge of 3.0 Ah, 1.5 A to 0.15 A", "180", chargedMin("INR", 25, 3000, 1.5, 0.15), "min", 180, SHEETS);
        row("charge of 3.0 Ah, 4 A to 0.1 A", "70", chargedMin("INR", 25, 3000, 4, 0.1), "min", 70, SHEETS);
        row("charge of 2.6 Ah ICR, 1.3 A", "180", chargedMin("ICR", 60, 2600, 1.3, 0.13), "min", 180, SHEETS);
        row("charge of 2.6 Ah ICR, 2.6 A", "150", chargedMin("ICR", 60, 2600, 2.6, 0.13), "min", 150, SHEETS);
    }

    private static double chargedMin(String kind, double mohm, double mah, double ampere, double taperA) {
        // A cell's own resistance holds at the charge it is given with: empty, it is 2.02 times that of half charge.
        Part empty = cell(kind, 2.02 * mohm, mah).without("rest_V").with("charge", 0);
        Part charger = Part.of("charger", PartKind.CHARGER, "current_A", ampere, "limit_V", 4.2, "taper_A", taperA);
        Scenario scenario = Scenario.of(
                "Charging",
                List.of(empty, charger),
                List.of(Circuits.touch("charger.+", "A.+", 10), Circuits.ideal("charger.-", "A.-")));
        return Runner.run(Bench.of(scenario, Circuits.NOTHING), RunPlan.USUAL)
                        .last()
                        .timeS()
                / 60;
    }

    private void abuse() {
        CellMoment driven = Runner.run(
                        ElectronicLoad.on(cell("INR", 25, 2500), 2.5, 25),
                        RunPlan.held().until(7200),
                        RunSettings.USUAL,
                        RunProgress.NONE)
                .last()
                .cells()
                .get(0);
        row(
                "lowest of an 18650 at 1C to 200 % depth of discharge",
                "−1.3 to −1.5", driven.leastV(), "V", Double.NaN, COPPER);
        row("hottest of it (bridge fitted to this)", "79", driven.peakC(), "°C", 79, COPPER);
        Stepper stepper = new Stepper(
                Bench.of(Circuits.single(cell("NCR", 22, 3000), 0.001), Circuits.NOTHING), RunSettings.USUAL);
        RunState shorted = stepper.advance(stepper.start(), Press.HELD, 5).state();
        row(
                "short of 1 mΩ after 5 s (model keeps it up)",
                "falling from 60 to 200",
                shorted.cells().get(0).currentA(),
                "A",
                Double.NaN,
                "from memory");
        FuseMelting fuse = new FuseMelting(20, FuseSpec.usualMeltingA2s(20));
        row(
                "blade fuse of 20 A at 135 %",
                "0.75 to 600", fuse.meltingTimeS(27), "s", Double.NaN, "ISO 8820-3, from memory");
    }

    private static CoilWinding wound(double wraps, double legsM) {
        CoilWire wire = CoilWire.single(
                CatalogueLoader.builtIn().alloys().find("nicr-80-20").orElseThrow(), new Gauge(26).size());
        return new CoilWinding(wire, wraps, 3e-3, legsM);
    }

    private static double ampereFor(CoilWinding winding, double hotC) {
        return Math.sqrt(winding.thermal().lossW(hotC, 20) / winding.ohmAt(hotC));
    }

    private void coils() {
        double[][] published = {{200, 1.61}, {500, 2.90}, {800, 4.65}, {1000, 6.10}};
        for (double[] row : published) {
            row(
                    "straight NiCr 80/20, AWG 26, for " + (int) row[0] + " °C",
                    "" + row[1],
                    ampereFor(wound(1e-6, 1), row[0]),
                    "A",
                    row[1],
                    WIRE);
        }
        double less = 1 - ampereFor(wound(8, 0), 600) / ampereFor(wound(1e-6, 1), 600);
        row(
                "less current for a close coil of 8 wraps at 600 °C",
                "30 to 60",
                100 * less,
                "%",
                Double.NaN,
                "wiretron.com, notes on coiled wire");
    }

    private String table() {
        rows.add("| what | outside | model | off by | source |");
        rows.add("| --- | --- | --- | --- | --- |");
        energies();
        cold();
        charging();
        abuse();
        coils();
        return String.join("\n", rows) + "\n";
    }

    private static String[] notes() throws IOException {
        String text = Files.readString(FILE).replace("\r\n", "\n");
        int begin = text.indexOf(BEGIN) + BEGIN.length();
        int end = text.indexOf(END);
        assertTrue(end >= begin && begin >= BEGIN.length(), "the notes have no place for the table");
        return new String[] {text.substring(0, begin), text.substring(begin, end), text.substring(end)};
    }

    @BeforeAll
    static void write() throws IOException {
        if (Boolean.getBoolean("sagwise.write")) {
            String[] notes = notes();
            Files.writeString(FILE, notes[0] + new ModelTableTest().table() + notes[2]);
        }
    }

    @Test
    void notes_theirTable_isWhatTheModelGives() throws IOException {
        assertEquals(table(), notes()[1], "made anew by -Dsagwise.write=true");
    }
}
