package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Building, turning, joining and taking apart, by mouse and by keyboard. */
class BuildingGuiTest extends BenchInteractionGuiTest {

    private void buildPair() {
        drag(CELL, 0.25, 0.5);
        drag(CELL, 0.45, 0.5);
        drag(BUTTON, 0.65, 0.25);
        drag(COIL, 0.85, 0.6);
        robot().clickOn("#join-ideal");
        join("A-plus", "B-plus");
        join("A-minus", "B-minus");
        join("B-plus", "fire-1");
        join("fire-2", "coil-1");
        join("coil-2", "B-minus");
    }

    /** 22 mΩ each, 3 mΩ of button: 4.2 V / (1 + 0.011 + 0.003) Ω = 4.142 A, 17.16 W in 1 Ω. */
    @Test
    void build_pairByMouse_givesItsWatts() {
        buildPair();

        assertEquals("−17.16", firedWatts());
    }

    @Test
    void undo_untilEmpty_isSavedAgain() {
        buildPair();
        for (int i = 0; i < 9; i++) {
            robot().push(KeyCode.CONTROL, KeyCode.Z);
        }
        settle();

        assertFalse(isThere("part-A"));
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        settle();
        assertTrue(isThere("part-A"));
    }

    /** Nothing but keys: shelf, place, join, turn, fire. */
    @Test
    void build_byKeyboardAlone_givesItsWatts() {
        place(CELL, KeyCode.LEFT, 6);
        place(COIL, KeyCode.RIGHT, 6);
        robot().interact(() -> node("join-ideal").requestFocus());
        robot().push(KeyCode.ENTER);
        joinByKeys("A-plus", KeyCode.UP, "coil-1");
        joinByKeys("A-minus", KeyCode.DOWN, "coil-2");

        openReadings();
        // 4.2 V on 1 Ω through 22 mΩ.
        assertEquals("−16.89", text("ledger-coils-watts"));
    }

    private void place(String good, KeyCode way, int steps) {
        robot().interact(() -> node(good).requestFocus());
        robot().push(KeyCode.ENTER);
        for (int i = 0; i < steps; i++) {
            robot().push(way);
        }
        robot().push(KeyCode.ENTER);
        settle();
    }

    /** Goes right until there is nothing more, then up or down, as somebody who sees it would. */
    private void joinByKeys(String one, KeyCode then, String other) {
        robot().interact(() -> node("terminal-" + one).requestFocus());
        robot().push(KeyCode.J);
        robot().push(KeyCode.RIGHT).push(KeyCode.RIGHT).push(KeyCode.RIGHT);
        if (!node("terminal-" + other).isFocused()) {
            robot().push(then);
        }
        assertTrue(node("terminal-" + other).isFocused());
        robot().push(KeyCode.ENTER);
        settle();
    }

    @Test
    void letter_onAClosedListOfTheCard_choosesTheWordThatBeginsWithIt() throws Exception {
        open();
        open("A");
        robot().interact(() -> node("field-wrap").requestFocus());
        robot().push(KeyCode.T);
        settle();

        assertEquals("torn", ((ComboBox<?>) node("field-wrap")).getValue());
    }

    /** Of the catalogue's 22 mΩ nothing is known; 70 typed in are more than three times as much. */
    @Test
    void card_ofACell_judgesItsOhmsAsTheReadingsDo() throws Exception {
        open();
        open("A");
        fill("internal_mohm", "70");

        assertEquals("Resistance 70 mΩ, usual 22 mΩ: past use", text("card-health"));
    }
}
