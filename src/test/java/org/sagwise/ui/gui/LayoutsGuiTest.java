package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.touch;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.MenuItems;

/** Cells joined another way by one action. */
class LayoutsGuiTest extends GuiTest {

    private void openSix() throws Exception {
        Part[] cells = Stream.of("A", "B", "C", "D", "E", "F")
                .map(id -> cell(id, 4.2, 30))
                .toArray(Part[]::new);
        open(saved(parallel(1, cells).released()));
    }

    private String saved(Scenario scenario) {
        Path file = folder().resolve("bench.sagwise.json");
        ScenarioFiles.save(file, scenario);
        return file.toString();
    }

    private void key(KeyCode... codes) {
        robot().push(codes);
        settle();
    }

    private void click(String id) {
        robot().clickOn("#" + id);
        settle();
    }

    /** What undo would take back. */
    private String last() {
        return MenuItems.item(node("menus"), "item-undo").getText();
    }

    /**
     * By hand: three contacts, button and coil are 1.015 Ω, the cells with B's two contacts 22 and
     * 30 mΩ side by side: 4.2 V / 1.0277 Ω = 4.087 A, of which A gives 30 in 52.
     */
    @Test
    void parallel_withLooseCoilAndButton_becomesACircuit() throws Exception {
        Scenario loose =
                Scenario.of("Loose", List.of(cell("A", 4.2, 22), cell("B", 4.2, 22), button(3), coil(1)), List.of());
        open(saved(loose));
        key(KeyCode.CONTROL, KeyCode.DIGIT1);
        robot().press(KeyCode.SPACE);
        settle();
        String firing = text("limit-A");
        robot().release(KeyCode.SPACE);

        assertTrue(firing.startsWith("2.36 A"), firing);
    }

    /** Nothing happens, and it is said why and what to do. */
    @Test
    void layouts_withOneCell_sayWhatIsMissing() throws Exception {
        open(saved(Scenario.of("Lone", List.of(cell("A", 4.2, 22), coil(1)), List.of())));
        for (KeyCode code : List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4)) {
            robot().interact(() -> node("bench").requestFocus());
            key(KeyCode.CONTROL, code);
            assertTrue(said().contains("second one from the shelf"), code + ": " + said());
            key(KeyCode.ESCAPE);
        }
    }

    @Test
    void rows_ofTwoCells_sayWhatMakesRows() throws Exception {
        open(saved(parallel(1, cell("A", 4.2, 22), cell("B", 4.2, 22)).released()));
        key(KeyCode.CONTROL, KeyCode.DIGIT3);
        assertTrue(said().contains("Four, six, eight or nine"), said());
    }

    private String said() {
        return text("status-line");
    }

    @Test
    void rows_ofSixCellsByMouse_areTheOnesThatAreChosen() throws Exception {
        openSix();
        key(KeyCode.CONTROL, KeyCode.DIGIT3);
        click("rows-3s2p");
        click("rows-dialog-ok_done");

        assertTrue(last().endsWith("put 6 cells in 3 rows"), last());
    }

    @Test
    void rows_ofSixCellsByKeys_areTheOnesThatAreChosen() throws Exception {
        openSix();
        key(KeyCode.CONTROL, KeyCode.DIGIT3);
        key(KeyCode.ENTER);
        assertTrue(last().endsWith("put 6 cells in 2 rows"), last());

        key(KeyCode.CONTROL, KeyCode.DIGIT3);
        key(KeyCode.DOWN);
        key(KeyCode.ENTER);
        assertTrue(last().endsWith("put 6 cells in 3 rows"), last());
    }

    /**
     * By hand: 2 in series lose 4 contacts, 2 cells' insides; the coil comes out with many digits,
     * of which three mean anything.
     */
    @Test
    void sameWatts_coil_isToldRoundedAndKeptExactly() throws Exception {
        Scenario pair = Scenario.of(
                "Pair",
                List.of(cell("A", 4.2, 22), cell("B", 4.2, 22), button(3), coil(1)),
                List.of(
                        touch("A.+", "B.+", 4),
                        touch("A.-", "B.-", 4),
                        touch("A.+", "fire.1", 4),
                        touch("fire.2", "coil.1", 4),
                        touch("coil.2", "A.-", 4)));
        open(saved(pair));
        key(KeyCode.CONTROL, KeyCode.DIGIT4);
        String told = text("watts-ohm-then");
        assertTrue(told.matches("about \\d\\.\\d\\d Ω"), told);
        // The window takes the size of what was found.
        settle();
        click("watts-dialog-ok_done");
        click("part-coil");
        key(KeyCode.ENTER);

        String field = ((TextField) node("field-ohm")).getText();
        assertEquals(told, "about " + field + " Ω");
        assertTrue(text("about-ohm").startsWith("about; exactly " + field.substring(0, 2)), text("about-ohm"));
        key(KeyCode.ENTER);
        assertEquals(field, ((TextField) node("field-ohm")).getText());
        assertTrue(last().contains("cells in a row"), last());
    }
}
