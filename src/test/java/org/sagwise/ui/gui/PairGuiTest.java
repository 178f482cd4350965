package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is done to a pair of cells side by side that is built already. */
class PairGuiTest extends BenchInteractionGuiTest {

    /** Built by hand it would take a robot ten seconds; {@link BuildingGuiTest} does so once. */
    @Override
    @BeforeEach
    void openABench() throws Exception {
        openIn("en", "src/test/resources/benches/pair-on-one-ohm.sagwise.json");
    }

    /** 8.4 V drive one round 44 mΩ: 191 A with the button let go. */
    @Test
    void flip_cellOfAPair_isADanger() {
        robot().clickOn("#part-B").push(KeyCode.F);
        settle();

        assertTrue(isThere("danger-strip"));
        assertEquals("Button open", text("fire-state"));
        assertTrue(text("limit-B").startsWith("191 A"), text("limit-B"));
    }

    @Test
    void delete_part_takesItsJointsAlong() {
        robot().clickOn("#part-A").push(KeyCode.DELETE);
        settle();

        assertFalse(isThere("part-A"));
        assertEquals("−16.79", firedWatts());
    }

    /** The textbook case: no internal resistance, no button resistance, 4.2 V on 1 Ω. */
    @Test
    void card_idealValues_give17Point6Watts() {
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
