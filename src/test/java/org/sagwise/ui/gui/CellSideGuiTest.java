package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The side of a cell: a terminal that lies on the cell itself. */
class CellSideGuiTest extends BenchInteractionGuiTest {

    private void twoCells() {
        drag(CELL, 0.3, 0.5);
        drag(CELL, 0.7, 0.5);
    }

    @Test
    void click_onTheSide_choosesTheCell() {
        twoCells();
        robot().clickOn("#terminal-A-can").push(KeyCode.DELETE);
        settle();

        assertFalse(isThere("part-A"));
        assertTrue(isThere("part-B"));
    }

    @Test
    void click_onTheSideWithAJointInHand_joinsIt() {
        twoCells();
        join("B-plus", "A-can");
        openReadings();

        assertTrue(isThere("caution-joint-on-sound-wrap"));
    }
}
