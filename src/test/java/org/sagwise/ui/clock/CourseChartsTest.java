package org.sagwise.ui.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.picture.plot.Curve;
import org.sagwise.report.RunCsv;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.CourseCharts;
import org.sagwise.report.course.Quantity;
import org.sagwise.run.CellMoment;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;

/** The curves of what was recorded, and the table of it. */
class CourseChartsTest {

    private final FakeTime time = new FakeTime("two-cells-side-by-side");

    private Trace record() {
        time.clock.go();
        time.pass(1);
        time.press();
        time.pass(4);
        time.release();
        time.pass(5);
        time.clock.pause();
        return time.clock.course().orElseThrow();
    }

    private CourseCharts charts(Trace course) {
        return new CourseCharts(time.clock.bench(), course, new ClockTexts(Locale.ENGLISH));
    }

    @Test
    void volts_ofAPair_areThoseOfTheStatesAtRestAndAtTheTerminals() {
        Trace course = record();
        List<Curve> curves = charts(course).of(Quantity.VOLTS, Set.of()).curves();

        assertEquals(
                List.of("A", "rest", "B", "rest"),
                curves.stream().map(Curve::name).toList());
        RunState held = course.stateAt(3);
        CellMoment a = held.cells().get(0);
        assertEquals(a.terminalV(), curves.get(0).at(3), 1e-3);
        assertEquals(a.restV(), curves.get(1).at(3), 1e-4);
        assertTrue(curves.get(0).at(0.5) > curves.get(0).at(3) + 0.03);
    }

    @Test
    void amps_withACoil_showCellsAndCoil() {
        List<Curve> curves = charts(record()).of(Quantity.AMPS, Set.of()).curves();

        assertEquals(3, curves.size());
        double cells = curves.get(0).at(3) + curves.get(1).at(3);
        assertEquals(curves.get(2).at(3), cells, 1e-3);
    }

    @Test
    void chart_withAHiddenPart_leavesItOutAndKeepsTheOthersLines() {
        CourseCharts charts = charts(record());
        Curve before = charts.of(Quantity.CHARGE, Set.of()).curves().get(1);
        List<Curve> curves = charts.of(Quantity.CHARGE, Set.of("A")).curves();

        assertEquals(1, curves.size());
        assertEquals(before.series(), curves.get(0).series());
    }

    @Test
    void table_ofACourse_isTheOneThatTheCommandLineWrites(@TempDir Path folder) throws IOException {
        Trace course = record();
        Path file = folder.resolve("run.csv");

        assertEquals(Optional.empty(), CourseSaver.write(course, file, Locale.ENGLISH));
        assertEquals(RunCsv.of(course), Files.readString(file));
    }

    @Test
    void table_whereNothingCanBeWritten_saysWhy(@TempDir Path folder) {
        Path file = folder.resolve("missing").resolve("run.csv");

        assertTrue(CourseSaver.write(record(), file, Locale.ENGLISH).isPresent());
    }

    @Test
    void table_inPlaceOfAnOlderOne_leavesNothingBeside(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("run.csv"), "older");

        assertEquals(Optional.empty(), CourseSaver.write(record(), file, Locale.ENGLISH));
        try (var beside = Files.list(folder)) {
            assertEquals(List.of(file), beside.toList());
        }
        assertTrue(Files.readString(file).length() > 100);
    }
}
