package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Holding the fire button, by key, by mouse and by latch. */
class FiringGuiTest extends GuiTest {

    @BeforeEach
    void openTheWindow() throws Exception {
        open();
    }

    private void assertAtRest() {
        assertEquals("Button open", text("fire-state"));
        assertEquals("0.00", text("ledger-coils-watts"));
        assertEquals("0.00 A of 20 A", text("limit-A"));
    }

    private void assertFiring() {
        assertEquals("Firing", text("fire-state"));
        assertTrue(text("ledger-coils-watts").startsWith("−16."), text("ledger-coils-watts"));
        assertTrue(text("ledger-given-volts").startsWith("4."), text("ledger-given-volts"));
        assertEquals("0.00", text("ledger-balance-watts"));
        assertNotEquals("0.00 A of 20 A", text("limit-A"));
    }

    @Test
    void space_heldAndLetGo_firesAndStops() {
        assertAtRest();
        robot().press(KeyCode.SPACE);
        settle();
        assertFiring();

        robot().release(KeyCode.SPACE);
        settle();
        assertAtRest();
    }

    /** What is seen, which is not what a label was told until it was laid out. */
    private String seen(String id) {
        return ((Text) node(id).lookup(".text")).getText();
    }

    @Test
    void words_ofTheButton_areSeenAsTheyAreTold() {
        assertEquals("Button open", seen("fire-state"));
        robot().push(KeyCode.CONTROL, KeyCode.N);
        settle();
        assertEquals("No button", seen("fire-state"));
        openExamples();
        robot().interact(() -> ((ButtonBase) robot().lookup(".example").nth(1).query()).fire());
        settle();

        assertEquals("Button open", seen("fire-state"));
    }

    /** What a press changes settles in its own room: to lay out the window anew would hold up the frame. */
    @Test
    void button_pressedAndLetGo_leavesAllElseLaidOut() {
        for (int turn = 0; turn < 4; turn++) {
            robot().interact(() -> ((ToggleButton) node("latch")).fire());
            settle();
        }
        List<String> anew = new ArrayList<>();
        robot().interact(() -> {
            ((ToggleButton) node("latch")).fire();
            Stream.of("latch", "ledger", "limits", "cautions", "status-line", "readings-toggle", "bench", "staircase")
                    .filter(id -> node(id).getParent().isNeedsLayout())
                    .forEach(anew::add);
        });

        assertEquals(List.of(), anew);
    }

    @Test
    void readings_takenAnew_keepTheirLines() {
        List<String> lines = List.of("ledger-coils-watts", "limit-A");
        List<Node> before = lines.stream().map(this::node).toList();
        robot().press(KeyCode.SPACE);
        settle();
        List<Node> held = lines.stream().map(this::node).toList();
        robot().release(KeyCode.SPACE);

        assertEquals(before, held);
    }

    @Test
    void mouse_heldOnTheFireButton_firesAndStops() {
        robot().moveTo("#fire").press(MouseButton.PRIMARY);
        settle();
        assertFiring();

        robot().release(MouseButton.PRIMARY);
        settle();
        assertAtRest();
    }

    @Test
    void mouse_heldOnTheDrawnButton_firesAndStops() {
        robot().moveTo("#part-fire").press(MouseButton.PRIMARY);
        settle();
        assertFiring();

        robot().release(MouseButton.PRIMARY);
        settle();
        assertAtRest();
    }

    @Test
    void latch_clickedTwice_keepsHeldAndLetsGo() {
        robot().clickOn("#latch");
        settle();
        assertFiring();

        robot().clickOn("#latch");
        settle();
        assertAtRest();
    }

    @Test
    void space_afterWorkingAnotherButton_stillFires() {
        openExamples();
        work("example-two-in-a-row");
        robot().press(KeyCode.SPACE);
        settle();
        assertEquals("Firing", text("fire-state"));
        assertEquals("Two cells in a row, same watts", text("bench-title"));

        robot().release(KeyCode.SPACE);
        settle();
        assertEquals("Button open", text("fire-state"));
    }

    @Test
    void part_pointedAt_isReadOutLive() {
        robot().moveTo("#part-coil");
        settle();
        String atRest = text("status-line");
        robot().press(KeyCode.SPACE);
        settle();
        String firing = text("status-line");
        robot().release(KeyCode.SPACE);

        assertTrue(atRest.startsWith("Coil: 1.00 Ω, gets 0.00 V"), atRest);
        assertTrue(firing.contains("gets 4.1"), firing);
    }
}
