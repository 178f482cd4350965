package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.Bounds;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;

/** The meter in the hand, by mouse and by keys. */
class MeterGuiTest extends GuiTest {

    private static final String BENCH_CHECK = "demo-scenarios/bench-check.sagwise.json";

    private void drag(String probe, String terminal) {
        robot().drag("#" + probe, MouseButton.PRIMARY).dropTo("#" + terminal);
        settle();
    }

    /** Moved a little past the slack first, so that it is a drag to the bench as well. */
    private void drag(String from, double x, double y) {
        Bounds bench = node("bench").localToScreen(node("bench").getBoundsInLocal());
        robot().drag("#" + from, MouseButton.PRIMARY)
                .moveTo(bench.getMinX() + x * bench.getWidth(), bench.getMinY() + y * bench.getHeight())
                .drop();
        settle();
    }

    private void click(String id) {
        robot().clickOn("#" + id);
        settle();
    }

    private void key(KeyCode... codes) {
        robot().push(codes);
        settle();
    }

    private void shows(String figure, String mode) {
        String says = node("meter-" + mode).getAccessibleText();
        assertTrue(says.contains(" " + figure + "."), says);
    }

    private void showsUnderLoad(String figure, String mode) {
        robot().interact(() -> node("bench").requestFocus());
        robot().press(KeyCode.SPACE);
        settle();
        shows(figure, mode);
        robot().release(KeyCode.SPACE);
        settle();
    }

    @Test
    void benchCheck_byMouse_showsItsThreeReadings() throws Exception {
        open(BENCH_CHECK);

        shows("4.14 V", "volts");
        showsUnderLoad("3.80 V", "volts");
        drag("probe-red", "terminal-coil-1");
        drag("probe-black", "terminal-coil-2");
        showsUnderLoad("3.38 V", "volts");
        shows("0.00 V", "volts");
        assertFalse(node("meter-strip").isVisible());
    }

    /** On the bench 11.3 A; the meter's own 10 mΩ in 0.367 Ω take 2.7 % of them. */
    @Test
    void amps_byMouse_areRefusedAcrossTheCoilAndReadAtAJoint() throws Exception {
        open(BENCH_CHECK);
        click("meter-amps");
        assertTrue(text("meter-words").startsWith("Not like this"), text("meter-words"));
        assertFalse(node("button-meter-in-line").isVisible());

        drag("probe-red", "terminal-coil-2");
        showsUnderLoad("11.0 A", "amps");
        assertTrue(text("meter-words").startsWith("As if this joint"), text("meter-words"));

        click("button-meter-in-line");
        assertTrue(isThere("part-meter"));
        assertFalse(isThere("probe-red"));
        key(KeyCode.CONTROL, KeyCode.Z);
        assertFalse(isThere("part-meter"));
        assertTrue(isThere("probe-red"));
    }

    @Test
    void probes_byMouse_comeFromTheBarAndGoBack() throws Exception {
        open(BENCH_CHECK);
        drag("probe-red", 0.5, 0.95);
        assertFalse(isThere("probe-red"));
        assertFalse(isThere("meter-volts"));

        robot().drag("#button-probe-red", MouseButton.PRIMARY).dropTo("#terminal-A-plus");
        settle();
        shows("0.00 V", "volts");
        robot().drag("#button-probe-black", MouseButton.PRIMARY).dropTo("#terminal-A-minus");
        settle();
        shows("4.14 V", "volts");
        click("probe-red");
        click("terminal-A-minus");
        shows("0.00 V", "volts");
    }

    @Test
    void meter_byKeysAlone_isPutTurnedAndPutAway() throws Exception {
        open(BENCH_CHECK);
        robot().interact(() -> node("part-A").requestFocus());
        key(KeyCode.P);
        assertTrue(node("terminal-A-plus").isFocused());
        key(KeyCode.DOWN);
        assertTrue(node("terminal-A-minus").isFocused());
        key(KeyCode.ENTER);
        shows("0.00 V", "volts");

        key(KeyCode.A);
        assertTrue(text("meter-words").startsWith("Both probes"), text("meter-words"));
        key(KeyCode.O);
        assertTrue(text("meter-words").startsWith("Cell A still drives"), text("meter-words"));
        robot().interact(() -> node("probe-red").requestFocus());
        key(KeyCode.RIGHT);
        key(KeyCode.RIGHT);
        assertTrue(node("meter-volts").isFocused());
        key(KeyCode.ENTER);
        assertFalse(node("meter-strip").isVisible());

        key(KeyCode.SHIFT, KeyCode.P);
        key(KeyCode.DELETE);
        assertFalse(isThere("probe-red"));
        robot().interact(() -> node("part-A").requestFocus());
        key(KeyCode.P);
        key(KeyCode.ENTER);
        assertTrue(isThere("probe-red"));
        assertEquals("probe of the meter", node("probe-red").getAccessibleRoleDescription());
    }

    @Test
    void ohms_ofADeadCircuit_areRead() throws Exception {
        open(BENCH_CHECK);
        drag("probe-red", "terminal-coil-1");
        drag("probe-black", "terminal-coil-2");
        click("meter-ohms");
        assertTrue(node("meter-strip").isVisible());
        click("part-A");
        key(KeyCode.DELETE);
        shows("0.30 Ω", "ohms");
        assertFalse(node("meter-strip").isVisible());
    }

    /** The readings of the bench check go into the form: 0.34 V / 11.27 A = 30.2 mΩ. */
    @Test
    void readings_writtenDownByKeys_fillTheForm() throws Exception {
        open(BENCH_CHECK);
        robot().interact(() -> node("bench").requestFocus());
        key(KeyCode.W);
        assertTrue(text("status-line").startsWith("Written down: cell at rest, 4.14 V"));
        writeUnderLoad();
        drag("probe-red", "terminal-coil-1");
        drag("probe-black", "terminal-coil-2");
        writeUnderLoad();
        key(KeyCode.W);
        assertTrue(text("status-line").startsWith("Written down are"), text("status-line"));
        key(KeyCode.CONTROL, KeyCode.M);

        assertEquals("4.14 V", field("rest"));
        assertEquals("3.80 V", field("cell"));
        assertEquals("3.38 V", field("coil"));
        assertEquals("", field("ohm"));
    }

    private void writeUnderLoad() {
        robot().interact(() -> node("bench").requestFocus());
        robot().press(KeyCode.SPACE);
        settle();
        key(KeyCode.W);
        robot().release(KeyCode.SPACE);
        settle();
    }

    private String field(String name) {
        return ((TextField) node("measured-" + name)).getText();
    }
}
