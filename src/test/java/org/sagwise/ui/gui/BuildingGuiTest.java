package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.input.KeyCode;

import org.junit.jupiter.api.Test;

/** Building, turning, joining and taking apart, by mouse and by keyboard. */
class BuildingGuiTest extends HandsGuiTest {

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

    /** 8.4 V drive one round 44 mΩ: 191 A with the button let go. */
    @Test
    void flip_cellOfAPair_isADanger() {
        buildPair();
        robot().clickOn("#part-B").push(KeyCode.F);
        settle();

        assertTrue(isThere("danger-strip"));
        assertEquals("Button open", text("fire-state"));
        assertTrue(text("limit-B").startsWith("191 A"), text("limit-B"));
    }

    @Test
    void delete_part_takesItsJointsAlong() {
        buildPair();
        robot().clickOn("#part-A").push(KeyCode.DELETE);
        settle();

        assertFalse(isThere("part-A"));
        assertEquals("−16.79", firedWatts());
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

    /** The textbook case: no internal resistance, no button resistance, 4.2 V on 1 Ω. */
    @Test
    void card_idealValues_give17Point6Watts() {
        buildPair();
        for (String cell : new String[] {"A", "B"}) {
            open(cell);
            fill("internal_mohm", "0");
        }
        open("fire");
        fill("closed_mohm", "0 ohm");

        assertEquals("−17.64", firedWatts());
    }

    @Test
    void card_nonsenseAndTooMuch_isSaidBesideTheField() {
        buildPair();
        open("coil");
        fill("ohm", "many");
        assertTrue(text("error-ohm").contains("many"), text("error-ohm"));

        fill("ohm", "-3");
        assertFalse(text("error-ohm").isBlank());
        assertEquals("−17.16", firedWatts());

        fill("ohm", "300 mΩ");
        assertFalse(isThere("error-ohm"));
    }

    /**
     * Ideal but for the cells: in a row the coil is four times as large, amps per cell the same.
     */
    @Test
    void sameWatts_pairIntoARow_findsTheCoil() {
        buildPair();
        robot().interact(() -> node("bench").requestFocus());
        robot().push(KeyCode.CONTROL, KeyCode.DIGIT4);
        settle();
        assertEquals("17.2 W", text("watts-power-now"));
        assertEquals("17.2 W", text("watts-power-then"));

        robot().clickOn("#watts-dialog-ok_done");
        settle();
        assertEquals("−17.16", firedWatts());
        robot().push(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("−17.16", firedWatts());
    }

    @Test
    void copyAndPaste_twoJoinedCells_laysThemBeside() {
        buildPair();
        robot().clickOn("#part-A").press(KeyCode.SHIFT).clickOn("#part-B");
        robot().release(KeyCode.SHIFT).push(KeyCode.CONTROL, KeyCode.C);
        robot().push(KeyCode.CONTROL, KeyCode.V);
        settle();
        assertTrue(isThere("part-C"));
        assertTrue(isThere("part-D"));
        assertEquals("−17.16", firedWatts());

        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertFalse(isThere("part-C"));
    }
}
