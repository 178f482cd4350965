package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DrawerFile;
import org.sagwise.file.UserFolders;
import org.sagwise.plan.drawer.Drawer;
import org.testfx.util.WaitForAsyncUtils;

/** A person's own cells, in their window. */
class DrawerGuiTest extends GuiTest {

    private static final String BENCH = "demo-scenarios/two-in-a-row.sagwise.json";

    private TableView<?> opened() {
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.D);
        settle();
        return (TableView<?>) node("drawer-table");
    }

    private void write(String field, String words) {
        robot().interact(() -> ((TextField) node(field)).setText(words));
    }

    private static Drawer kept() {
        Path file = UserFolders.here().data().resolve(DrawerFile.NAME);
        return ((DrawerFile.Opened.Ok) new DrawerFile(file, CatalogueLoader.builtIn()).open()).drawer();
    }

    @Test
    void cell_addedMeasuredAndTakenBack_isInTheFileEachTime() throws Exception {
        open(BENCH);
        TableView<?> table = opened();
        work("drawer-add");
        work("drawer-cell-ok_done");
        assertTrue(text("drawer-cell-trouble").contains("Mark on the cell"), text("drawer-cell-trouble"));
        write("drawer-mark", "A1");
        write("drawer-capacity_mAh", "2,5 Ah");
        work("drawer-cell-ok_done");
        assertEquals(1, table.getItems().size());

        work("drawer-measure");
        write("drawer-capacity_mAh", "2480");
        write("drawer-internal_mohm", "0.0213 ohm");
        work("drawer-measure-ok_done");
        assertEquals(2.48, kept().find("A1").orElseThrow().capacityAh().orElseThrow(), 1e-9);
        assertEquals(0.0213, kept().find("A1").orElseThrow().resistanceOhm().orElseThrow(), 1e-9);
        assertTrue(text("drawer-measured").contains("2480 mAh, 21.3 mΩ"), text("drawer-measured"));

        work("drawer-correct");
        write("drawer-capacity_mAh", "2460");
        work("drawer-measure-ok_done");
        assertEquals(2.46, kept().find("A1").orElseThrow().capacityAh().orElseThrow(), 1e-9);
        work("drawer-undo");
        assertEquals(2.48, kept().find("A1").orElseThrow().capacityAh().orElseThrow(), 1e-9);

        work("drawer-undo");
        assertTrue(kept().find("A1").orElseThrow().measurements().isEmpty());
        work("drawer-undo");
        assertEquals(Drawer.EMPTY, kept());
        assertTrue(table.getItems().isEmpty());
    }

    @Test
    void pairOfTheClass_laidOnTheBench_isThereWithItsMarks() throws Exception {
        open(BENCH);
        TableView<?> table = opened();
        work("drawer-class");
        assertEquals(19, table.getItems().size());
        write("drawer-search", "loses");
        assertEquals(1, table.getItems().size());
        assertTrue(text("drawer-advice").contains("collection point"), text("drawer-advice"));
        write("drawer-search", "");

        robot().interact(() -> ((TabPane) node("drawer").lookup(".tab-pane"))
                .getSelectionModel()
                .select(1));
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> WaitForAsyncUtils.asyncFx(() -> text("pair-life").contains("longer"))
                        .get());
        TableView<?> sets = (TableView<?>) node("pair-sets");
        assertEquals(6, sets.getItems().size());
        work("pair-lay");
        assertTrue(text("drawer-said").startsWith("L9, L3 lie on the bench now"), text("drawer-said"));
        robot().interact(() -> node("part-A").requestFocus());
        settle();
        assertTrue(text("status-line").contains("L9"), text("status-line"));
        assertEquals(Drawer.EMPTY, kept(), "the class's drawer is kept apart from one's own");
    }
}
