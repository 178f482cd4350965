package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Winding a coil in the window, from its card. */
class WindGuiTest extends GuiTest {

    @Test
    void wish_inOhms_isWoundInWholeWrapsAndUndoneInOneStep() throws Exception {
        open("demo-scenarios/two-cells-side-by-side.sagwise.json");
        robot().interact(() -> node("part-coil").requestFocus());
        robot().push(KeyCode.ENTER);
        settle();
        work("card-wind");
        write("wind-amount", "0.5 ohm");
        write("wind-legs", "12");
        String wound = text("wind-wraps");
        assertTrue(wound.matches("\\d+"), wound);
        String ohms = text("wind-ohm");

        work("wind-do");
        assertFalse(isThere("wind"));
        assertTrue(((TextField) node("field-wraps")).getText().startsWith(wound));
        assertTrue(ohms.endsWith("Ω"), ohms);

        robot().push(KeyCode.SHORTCUT, KeyCode.Z);
        settle();
        assertFalse(isThere("field-wraps"));
    }

    @Test
    void wish_thatNoWireFulfils_saysWhyAtTheWish() throws Exception {
        open("demo-scenarios/two-cells-side-by-side.sagwise.json");
        robot().interact(() -> node("part-coil").requestFocus());
        robot().push(KeyCode.ENTER);
        settle();
        work("card-wind");
        write("wind-amount", "1 mohm");
        assertTrue(text("wind-amount-error").contains("thicker wire"), text("wind-amount-error"));
        assertTrue(node("wind-do").isDisabled());

        robot().interact(() -> ((RadioButton) node("wind-wish-watts")).fire());
        write("wind-amount", "2000");
        assertTrue(text("wind-amount-error").contains("No one coil"), text("wind-amount-error"));

        robot().interact(() -> ((RadioButton) node("wind-wish-wraps")).fire());
        write("wind-amount", "8");
        assertEquals("", text("wind-amount-error"));
        assertEquals("8", text("wind-wraps"));
    }

    private void write(String field, String words) {
        robot().interact(() -> ((TextField) node(field)).setText(words));
    }
}
