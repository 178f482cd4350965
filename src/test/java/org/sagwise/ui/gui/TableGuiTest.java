package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The table of parts and readings, worked by keys alone and heard through its accessible side. */
class TableGuiTest extends GuiTest {

    private static final String BENCH = "demo-scenarios/bench-check.sagwise.json";

    private TableView<?> openedByKeys() {
        robot().push(KeyCode.CONTROL, KeyCode.T);
        settle();
        return (TableView<?>) node("readings-table");
    }

    private static String heard(TableView<?> table, int row, int column) {
        Node cell = (Node) table.queryAccessibleAttribute(AccessibleAttribute.CELL_AT_ROW_COLUMN, row, column);
        assertEquals(AccessibleRole.TABLE_CELL, cell.getAccessibleRole());
        return (String) cell.queryAccessibleAttribute(AccessibleAttribute.TEXT);
    }

    @Test
    void table_openedByKeys_tellsEveryPartAndJointToAScreenReader() throws Exception {
        open(BENCH);
        TableView<?> table = openedByKeys();

        assertEquals(AccessibleRole.TABLE_VIEW, table.getAccessibleRole());
        assertEquals(6, table.queryAccessibleAttribute(AccessibleAttribute.ROW_COUNT), "3 parts, 3 joints");
        assertEquals(6, table.queryAccessibleAttribute(AccessibleAttribute.COLUMN_COUNT));
        assertEquals(
                List.of("Part or joint", "Kind", "Voltage", "Current", "Power", "More"),
                table.getColumns().stream().map(column -> column.getText()).toList());
        assertEquals("A", heard(table, 0, 0));
        assertEquals("4.14 V", heard(table, 0, 2));
        assertEquals("open", heard(table, 1, 5));
    }

    @Test
    void menuOfARow_varies_theReadingThatWasChosen() throws Exception {
        open(BENCH);
        TableView<?> table = openedByKeys();
        robot().interact(() -> table.getSelectionModel().select(0));
        robot().interact(() -> table.getContextMenu().getItems().get(1).fire());
        settle();

        assertEquals("A.current_A", String.valueOf(((ComboBox<?>) node("vary-reading")).getValue()));
    }

    @Test
    void spaceInTheTable_held_firesAndTellsTheNumbersOfIt() throws Exception {
        open(BENCH);
        TableView<?> table = openedByKeys();
        robot().push(KeyCode.HOME);
        robot().press(KeyCode.SPACE);
        settle();
        String held = heard(table, 2, 3);
        robot().release(KeyCode.SPACE);
        settle();

        assertEquals("11.3 A", held);
        assertEquals("0.00 A", heard(table, 2, 3));
        assertEquals(0, table.getSelectionModel().getSelectedIndex(), "the place is kept");
    }

    /** What the line is about is picked out on the bench, so that two people can speak of it. */
    @Test
    void arrowsInTheTable_fromLineToLine_pickOutThePartOnTheBench() throws Exception {
        open(BENCH);
        TableView<?> table = openedByKeys();
        robot().interact(table::requestFocus);
        robot().push(KeyCode.HOME);
        settle();
        String atTheCell = text("status-line");
        robot().push(KeyCode.DOWN).push(KeyCode.DOWN);
        settle();
        String atTheCoil = text("status-line");

        assertTrue(atTheCell.startsWith("Cell A: at rest 4.14 V"), atTheCell);
        assertTrue(atTheCoil.contains("0.30 Ω"), atTheCoil);
    }

    @Test
    void table_afterAnEditOnTheBench_hasTheNewPart() throws Exception {
        open(BENCH);
        TableView<?> table = openedByKeys();
        int before = table.getItems().size();
        robot().interact(() -> node("bench").getScene().getWindow().requestFocus());
        robot().interact(() -> node("part-coil").requestFocus());
        robot().push(KeyCode.DELETE);
        settle();

        assertTrue(table.getItems().size() < before);
        assertFalse(
                table.getItems().toString().contains("coil"), table.getItems().toString());
    }

    @Test
    void table_openedTwice_isOneWindow() throws Exception {
        open(BENCH);
        openedByKeys();
        robot().interact(() -> node("bench").getScene().getWindow().requestFocus());
        openedByKeys();

        assertEquals(1, Set.copyOf(robot().lookup("#readings-table").queryAll()).size());
    }
}
