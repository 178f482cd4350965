package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An empty bench: what somebody who begins finds, by keys alone. */
class NewBenchGuiTest extends GuiTest {

    @BeforeEach
    void openAnEmptyBench() throws Exception {
        open();
        newBench();
    }

    @Test
    void newBench_standsAtTheFirstPartOfTheWholeShelf() {
        robot().push(KeyCode.CONTROL, KeyCode.F);
        robot().write("push");
        settle();
        newBench();

        assertEquals("", ((TextField) node("shelf-search")).getText());
        assertEquals(node(firstOnShelf()), node("bench").getScene().getFocusOwner());
    }

    @Test
    void legend_onAnEmptyBench_isNotShown() {
        assertFalse(node("potential-legend").isVisible());
        takeAndLay();
        assertTrue(node("potential-legend").isVisible());
    }

    @Test
    void search_enter_takesTheFirstThatIsFound() {
        robot().push(KeyCode.CONTROL, KeyCode.F);
        robot().write("1.00");
        robot().push(KeyCode.ENTER);
        robot().push(KeyCode.ENTER);
        settle();

        assertTrue(isThere("part-coil"));
    }

    @Test
    void duplicate_goesOnWithTheCopy() {
        takeAndLay();
        robot().push(KeyCode.CONTROL, KeyCode.D);
        settle();

        assertEquals(node("part-B"), node("bench").getScene().getFocusOwner());
    }

    @Test
    void duplicate_ofWhatHasANeighbour_coversNothing() {
        takeAndLay();
        robot().push(KeyCode.CONTROL, KeyCode.D);
        robot().push(KeyCode.LEFT).push(KeyCode.CONTROL, KeyCode.D);
        settle();

        Bounds copy = node("part-C").getBoundsInParent();
        assertFalse(copy.intersects(node("part-A").getBoundsInParent()));
        assertFalse(copy.intersects(node("part-B").getBoundsInParent()));
    }

    @Test
    void undo_ofThePartInFocus_leavesTheFocusOnTheBench() {
        takeAndLay();
        robot().push(KeyCode.CONTROL, KeyCode.D);
        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();

        assertEquals(node("bench"), node("bench").getScene().getFocusOwner());
    }

    /** The loop is laid in the middle; what was laid by hand before lies where the view then was. */
    @Test
    void undo_ofALayout_leavesNothingOutOfSight() {
        takeAndLay();
        for (int more = 0; more < 4; more++) {
            robot().push(KeyCode.CONTROL, KeyCode.D);
        }
        robot().push(KeyCode.CONTROL, KeyCode.DIGIT2);
        settle();
        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();

        Bounds felt = node("bench").localToScene(node("bench").getBoundsInLocal());
        for (String part : List.of("part-A", "part-E")) {
            assertTrue(felt.contains(node(part).localToScene(node(part).getBoundsInLocal())), part);
        }
    }

    @Test
    void hint_overAPartAtTheTop_standsAtTheFoot() {
        takeAndLay();
        assertTrue(hint().getMaxY() < benchMiddle());
        robot().push(KeyCode.M);
        for (int i = 0; i < 5; i++) {
            robot().push(KeyCode.UP);
        }
        robot().push(KeyCode.ENTER);
        settle();

        assertTrue(hint().getMinY() > benchMiddle());
    }

    @Test
    void arrows_fromMinus_goToTheOtherMinusBeforeTheBareSide() {
        takeAndLay();
        robot().push(KeyCode.CONTROL, KeyCode.D);
        robot().push(KeyCode.LEFT).push(KeyCode.DOWN);
        robot().push(KeyCode.J).push(KeyCode.RIGHT).push(KeyCode.ENTER);
        settle();

        assertEquals(
                "terminal-B-minus", node("bench").getScene().getFocusOwner().getId());
    }

    @Test
    void largeText_leavesNobodyWithoutAShelf() throws Exception {
        closeWindow();
        openToolkit();
        openWith("{\"notice_read\": 1000, \"language\": \"en\", \"looks\": \"light\"," + " \"text_percent\": 200}");
        assertFalse(isThere("left"), "there is room for both");

        robot().push(KeyCode.F9);
        settle();
        assertTrue(isThere("left"));

        robot().press(KeyCode.SPACE);
        settle();
        robot().release(KeyCode.SPACE);
        assertFalse(isThere("left"), "whoever fires wants the readings");

        newBench();
        assertTrue(isThere("shelf-search"), "whoever builds needs the shelf");
    }

    private void newBench() {
        robot().push(KeyCode.CONTROL, KeyCode.N);
        settle();
    }

    private void takeAndLay() {
        robot().push(KeyCode.ENTER);
        robot().push(KeyCode.ENTER);
        settle();
    }

    private Bounds hint() {
        Node hint = node("next-step");
        return hint.localToScene(hint.getLayoutBounds());
    }

    private double benchMiddle() {
        Node bench = node("bench");
        return bench.localToScene(bench.getLayoutBounds()).getCenterY();
    }

    private String firstOnShelf() {
        return robot().lookup(".shelf-item").query().getId();
    }
}
