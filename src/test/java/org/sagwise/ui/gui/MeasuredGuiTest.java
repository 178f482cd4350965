package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** From what a meter shows to a bench. */
class MeasuredGuiTest extends GuiTest {

    /** By hand: 3.38 V / 0.30 Ω = 11.27 A; 0.34 V / 11.27 A = 30.2 mΩ; 3.38² / 0.30 = 38.1 W. */
    @Test
    void readings_thatAgree_areWorkedOutAndPutOnTheBench() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.M);
        settle();
        assertTrue(node("measured-put").isDisabled());
        write("rest", "4.14");
        write("cell", "3.80 V");
        write("coil", "3380 mV");
        write("ohm", "0.30 ohm");

        assertEquals("30.2 mΩ", text("measured-internal-value"));
        assertEquals("38.1 W", text("measured-power-value"));

        work("measured-put");
        assertEquals("Measured on the bench", text("bench-title"));
        assertFalse(isThere("measured"));
    }

    @Test
    void readings_thatContradictEachOther_sayWhereAndPutNothingOnTheBench() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.M);
        settle();
        write("rest", "4.14");
        write("cell", "3.40");
        write("coil", "3.80");
        write("ohm", "0.3 parsecs");
        assertTrue(node("measured-ohm-error").isVisible());

        write("ohm", "0.30");
        assertFalse(node("measured-ohm-error").isVisible());
        assertTrue(text("measured-coil-error").contains("swapped"), text("measured-coil-error"));
        assertTrue(node("measured-put").isDisabled());
    }

    private void write(String field, String words) {
        robot().interact(() -> ((TextField) node("measured-" + field)).setText(words));
    }
}
