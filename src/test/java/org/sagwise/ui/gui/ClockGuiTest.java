package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.cli.SagwiseCommand;
import org.sagwise.file.DemoScenarios;
import org.sagwise.report.course.ClockTexts;
import org.testfx.util.WaitForAsyncUtils;

/** Time in the window: held until charge falls, and run down as the command line does. */
class ClockGuiTest extends GuiTest {

    private static final String PAIR = "two-cells-side-by-side";

    private void await(Callable<Boolean> condition) throws Exception {
        // Looked at between two changes of the window, never while it changes.
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition).get());
        settle();
    }

    private double given() {
        return Double.parseDouble(text("ledger-given-volts"));
    }

    @Test
    void space_heldWhileTimeRunsFast_usesChargeAndCanBeTurnedBack() throws Exception {
        open();
        robot().press(KeyCode.SPACE);
        settle();
        double full = given();
        robot().release(KeyCode.SPACE);
        openClock();
        work("speed-600");
        work("clock-go");
        robot().press(KeyCode.SPACE);
        await(() -> given() < full - 0.05);
        robot().release(KeyCode.SPACE);
        work("clock-go");
        assertEquals("1 press", text("clock-presses"));
        assertEquals("0.00", text("ledger-coils-watts"));

        robot().push(KeyCode.SHIFT, KeyCode.F8);
        await(() -> text("clock-time").equals("0:00.0"));
        robot().press(KeyCode.SPACE);
        settle();
        double again = given();
        robot().release(KeyCode.SPACE);
        assertEquals(full, again);
        assertTrue(((Slider) node("time-slider")).getMax() > 1, "what was recorded stays");
    }

    @Test
    void runDown_ofAPair_endsWhereTheCommandLineSaysItDoes() throws Exception {
        Path file = folder().resolve("pair.sagwise.json");
        Files.write(file, DemoScenarios.bytes(PAIR));
        open(file.toString());
        settle();
        openClock();
        work("clock-run-down");
        await(() -> isThere("halt-title") && !text("clock-time").equals("0:00.0"));
        JsonNode run = runJson(file);

        String end = new ClockTexts(Locale.ENGLISH).time(run.get("elapsed_s").asDouble());
        assertEquals("cutoff", run.get("ended_by").asText());
        assertEquals(end, text("clock-time"));
        assertEquals(
                String.format(Locale.ENGLISH, "%,d presses", run.get("presses").asInt()), text("clock-presses"));
        assertTrue(text("halt-title").contains(end), text("halt-title"));
        assertFalse(node("run-down-progress").isVisible());
    }

    @Test
    void curves_afterARunDownByAnotherPattern_areReadOffWhereTheClockStands() throws Exception {
        open();
        robot().push(KeyCode.F4);
        settle();
        enter("run-down-on", "");
        assertTrue(text("run-down-trouble").contains("0.1 s"), text("run-down-trouble"));
        enter("run-down-on", "1 min");
        enter("run-down-off", "0");
        assertEquals("", text("run-down-trouble"));
        robot().push(KeyCode.SHIFT, KeyCode.F4);
        await(() -> isThere("halt-close"));
        work("halt-close");

        assertTrue(node("curves").isVisible());
        assertEquals("at " + text("clock-time"), text("curves-moment"));
        assertTrue(text("readout-volts").startsWith("A 3.2"), text("readout-volts"));
        work("curve-of-A");
        assertTrue(text("readout-volts").startsWith("B 3."), text("readout-volts"));
        robot().push(KeyCode.SHIFT, KeyCode.F8);
        await(() -> text("curves-moment").equals("at 0:00.0"));
        assertTrue(text("readout-charge").endsWith("B 100 %"), text("readout-charge"));
    }

    private void enter(String id, String words) {
        robot().interact(() -> ((TextInputControl) node(id)).setText(words));
        settle();
    }

    private static JsonNode runJson(Path file) throws Exception {
        StringWriter out = new StringWriter();
        int status = SagwiseCommand.run(
                new String[] {"run", "--json", file.toString()},
                null,
                new PrintWriter(out),
                new PrintWriter(System.err),
                InputStream.nullInputStream());
        assertEquals(0, status);
        return new ObjectMapper().readTree(out.toString());
    }
}
