package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.ui.bench.BenchPane;
import org.testfx.util.WaitForAsyncUtils;

/** On a small laptop the window belongs to the bench, and what is said lies on it and moves nothing. */
class BenchFirstGuiTest extends GuiTest {

    private static final String LAPTOP = "{\"notice_read\": 1000, \"language\": \"%s\", \"looks\": \"light\","
            + " \"window\": {\"x\": 0, \"y\": 0, \"width\": 1280, \"height\": 720}}";

    private static final double WINDOW = 1280 * 720;

    /** Height of a digit against the body of its letters: that of capitals in the font of the figures. */
    private static final double DIGIT = 0.66;

    private void openLaptop(String... arguments) throws Exception {
        openWith(String.format(LAPTOP, "en"), arguments);
    }

    private Bounds on(String id) {
        Node node = node(id);
        return node.localToScene(node.getLayoutBounds());
    }

    private double share(String... ids) {
        double area = 0;
        for (String id : ids) {
            area += on(id).getWidth() * on(id).getHeight();
        }
        return area / WINDOW;
    }

    private void assertBenchFirst(String state) {
        assertEquals(1280, node("bench").getScene().getWidth(), 1);
        assertTrue(share("bench") >= 0.40, state + ": bench " + share("bench"));
        assertTrue(share("bench", "staircase") >= 0.65, state + ": both " + share("bench", "staircase"));
    }

    private void key(KeyCode... codes) {
        robot().push(codes);
        settle();
    }

    private void click(String id) {
        robot().clickOn("#" + id);
        settle();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void newcomer_onALaptop_seesBenchAndStaircase(String language) throws Exception {
        openWith(String.format(LAPTOP, language));
        assertBenchFirst("opened");
        assertFalse(node("clock").isVisible(), "nobody has used time");

        robot().press(KeyCode.SPACE);
        settle();
        assertBenchFirst("firing");
        robot().release(KeyCode.SPACE);
        for (String page : new String[] {"tab-examples", "tab-lessons", "tab-shelf", "tab-card"}) {
            click(page);
            assertTrue(isThere("left"), page);
            assertBenchFirst(page);
        }
        click("left-close");
        assertFalse(isThere("left"));
        assertBenchFirst("closed again");
    }

    @Test
    void newBench_onALaptop_showsWhatEveryCircuitNeedsWithoutScrolling() throws Exception {
        openLaptop();
        key(KeyCode.CONTROL, KeyCode.N);
        assertBenchFirst("building");
        for (String first : new String[] {"shelf-inr18650-2500-20A", "shelf-coil-1ohm-40W", "shelf-button"}) {
            assertTrue(on("left").contains(on(first)), first + " lies at " + on(first));
        }
    }

    @Test
    void lesson_onALaptop_leavesMostToTheBench() throws Exception {
        openLaptop();
        click("tab-lessons");
        awaitLesson("lesson-01-close-the-ring");
        click("lesson-01-close-the-ring");
        assertTrue(isThere("lesson"));
        assertTrue(share("bench", "staircase") >= 0.62, "both " + share("bench", "staircase"));
    }

    @Test
    void readings_closedAndOpened_giveTheBenchTheirRoom() throws Exception {
        openLaptop();
        double before = on("bench").getWidth();
        key(KeyCode.CONTROL, KeyCode.F9);
        assertFalse(isThere("side"));
        assertTrue(on("bench").getWidth() > before + 200);
        click("readings-toggle");
        assertEquals(before, on("bench").getWidth(), 0.5);

        key(KeyCode.F9);
        assertFalse(isThere("side"));
        key(KeyCode.CONTROL, KeyCode.F9);
        assertTrue(isThere("side") && isThere("left"), "both where both are asked for");
    }

    @Test
    void clock_comesWhenTimeIsUsedAndStays() throws Exception {
        openLaptop();
        key(KeyCode.F7);
        assertTrue(node("clock").isVisible());
        click("clock-toggle");
        assertFalse(node("clock").isVisible());
        click("clock-toggle");
        assertTrue(node("clock").isVisible());
    }

    @Test
    void danger_liesOnTheBenchAndMovesNothing() throws Exception {
        openLaptop();
        click("part-B");
        Bounds before = on("bench");
        click("button-flip");

        assertTrue(node("danger-strip").isVisible());
        assertEquals(before, on("bench"));
        assertTrue(before.contains(on("danger-strip")), on("danger-strip") + " in " + before);
    }

    @Test
    void endOfARun_liesOnTheBenchAndMovesNothing() throws Exception {
        openLaptop();
        click("clock-toggle");
        Bounds before = on("clock-curves");
        robot().interact(() -> ((Button) node("clock-run-down")).fire());
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> isThere("halt-title"));
        settle();

        assertEquals(before, on("clock-curves"));
        assertTrue(on("bench").contains(on("halt")), on("halt") + " in " + on("bench"));
        click("halt-close");
        assertFalse(node("halt").isVisible());
    }

    @Test
    void tools_standByWhatIsChosenAndWork() throws Exception {
        openLaptop();
        assertFalse(node("hand-tools").isVisible());
        click("part-B");
        assertTrue(node("hand-tools").isVisible());
        assertFalse(on("hand-tools").intersects(on("part-B")), "tools cover what is chosen");
        assertTrue(on("bench").contains(on("hand-tools")));
        double away = on("hand-tools").getMinY() > on("part-B").getMinY()
                ? on("hand-tools").getMinY() - on("part-B").getMaxY()
                : on("part-B").getMinY() - on("hand-tools").getMaxY();
        assertTrue(away < 60, "tools stand " + away + " px off");

        double high = on("part-B").getHeight();
        click("button-turn");
        assertTrue(on("part-B").getHeight() < high, "cell B was turned on its side");
        assertTrue(node("hand-tools").isVisible());
    }

    @Test
    void hint_clicked_leadsToWhatIsMissing() throws Exception {
        openLaptop();
        key(KeyCode.CONTROL, KeyCode.N);
        key(KeyCode.F9);
        assertFalse(isThere("left"));
        click("next-step");
        assertTrue(node("shelf-inr18650-2500-20A").isFocused());
    }

    @Test
    void projector_figuresAreReadFromTheBack() throws Exception {
        openLaptop();
        key(KeyCode.F12);
        BenchLayout layout = ((BenchPane) node("bench")).seen();
        double scale = node("part-A").getBoundsInParent().getHeight()
                / layout.part("A").orElseThrow().body().height();
        double digits = DIGIT * TextStyle.FIGURE.size() * layout.textScale() * scale;
        assertTrue(digits >= 720 / 45.0, "digits of " + digits + " px");
    }
}
