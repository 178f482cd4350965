package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.MenuItems;

/** Plates that join several terminals in one go, by mouse and by keys. */
class PlateGuiTest extends GuiTest {

    @BeforeEach
    void openThreeLooseCells() throws Exception {
        Scenario loose = Scenario.of("Loose", List.of(cell("A"), cell("B"), cell("C")), List.of())
                .withPlacement(Map.of(
                        "A", new Placement(2, 5, 0),
                        "B", new Placement(8, 5, 0),
                        "C", new Placement(14, 5, 0)));
        Path file = folder().resolve("loose.sagwise.json");
        ScenarioFiles.save(file, loose);
        open(file.toString());
    }

    private static Part cell(String id) {
        return Part.of(id, PartKind.CELL, "model", "inr18650-2500-20A", "charge", 1);
    }

    private void key(KeyCode... codes) {
        robot().push(codes);
        settle();
    }

    /** What undo would take back. */
    private String last() {
        return MenuItems.item(node("menus"), "item-undo").getText();
    }

    @Test
    void shiftClicks_onThreeTerminals_areJoinedByEnter() {
        robot().press(KeyCode.SHIFT);
        for (String cell : List.of("A", "B", "C")) {
            robot().clickOn("#terminal-" + cell + "-plus");
        }
        robot().release(KeyCode.SHIFT);
        settle();
        assertTrue(text("status-line").startsWith("3 for one plate"), text("status-line"));
        key(KeyCode.ENTER);

        assertTrue(last().contains("join 3 terminals by a plate"), last());
        key(KeyCode.CONTROL, KeyCode.Z);
        assertFalse(last().contains("join"), last());
    }

    @Test
    void keys_onThreeTerminals_joinThem() {
        robot().interact(() -> node("terminal-A-minus").requestFocus());
        key(KeyCode.SHIFT, KeyCode.J);
        key(KeyCode.RIGHT);
        key(KeyCode.SHIFT, KeyCode.J);
        key(KeyCode.RIGHT);
        key(KeyCode.SHIFT, KeyCode.J);
        key(KeyCode.ENTER);

        assertTrue(last().contains("join 3 terminals by a plate"), last());
    }

    @Test
    void command_onChosenParts_joinsOneEndAndThenTheOther() {
        robot().interact(() -> node("part-A").requestFocus());
        key(KeyCode.CONTROL, KeyCode.A);
        key(KeyCode.CONTROL, KeyCode.J);
        key(KeyCode.CONTROL, KeyCode.J);
        assertTrue(last().contains("join 3 terminals by a plate"), last());
        key(KeyCode.CONTROL, KeyCode.J);
        key(KeyCode.ENTER);
        key(KeyCode.P);
        key(KeyCode.ENTER);
        key(KeyCode.SHIFT, KeyCode.P);
        robot().clickOn("#terminal-C-minus");
        settle();

        assertTrue(node("meter-volts").getAccessibleText().contains("4.2"), "joined on both sides");
    }
}
