package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.plot.PlotView;
import org.testfx.util.WaitForAsyncUtils;

/** Varying a bench in the window, from the card of a part. */
class VaryGuiTest extends GuiTest {

    private void openForCoil() throws Exception {
        open("demo-scenarios/two-cells-side-by-side.sagwise.json");
        robot().interact(() -> node("part-coil").requestFocus());
        robot().push(KeyCode.ENTER);
        settle();
        work("card-vary");
        await(() -> !text("vary-readout").isEmpty());
    }

    private void await(Callable<Boolean> condition) throws TimeoutException {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, condition);
        settle();
    }

    private PlotView plot() {
        return (PlotView) node("vary-plot");
    }

    @Test
    void point_movedByKeys_isFollowedByTheBenchAndUndoneInOneStep() throws Exception {
        openForCoil();
        String ohms = ((TextField) node("field-ohm")).getText();
        String before = text("vary-readout");
        robot().interact(() -> plot().requestFocus());
        robot().push(KeyCode.RIGHT);
        robot().push(KeyCode.RIGHT);
        assertNotEquals(before, text("vary-readout"));
        assertTrue(plot().getAccessibleText().contains(text("vary-readout")), plot().getAccessibleText());
        assertEquals(ohms, ((TextField) node("field-ohm")).getText());

        robot().push(KeyCode.ENTER);
        settle();
        assertNotEquals(ohms, ((TextField) node("field-ohm")).getText());
        robot().push(KeyCode.ESCAPE);
        settle();
        assertFalse(isThere("vary"));
        robot().push(KeyCode.SHORTCUT, KeyCode.Z);
        settle();
        assertEquals(ohms, ((TextField) node("field-ohm")).getText());
    }

    @Test
    void secondValueAndBands_areDrawn() throws Exception {
        openForCoil();
        robot().interact(() -> ((CheckBox) node("vary-bands")).fire());
        await(() -> !plot().chart().bands().isEmpty());

        robot().interact(() ->
                ((ComboBox<?>) node("vary-and")).getSelectionModel().select(1));
        await(() -> plot().chart().field().isPresent());
        robot().interact(() -> ((TextField) node("vary-from")).setText("abc"));
        robot().interact(() -> node("vary-to").requestFocus());
        robot().interact(() -> plot().requestFocus());
        settle();
        assertFalse(text("vary-error").isEmpty());
    }

    @Test
    void spread_stopped_saysSoAndCanBeTriedAgain() throws Exception {
        openForCoil();
        robot().interact(() -> ((TabPane) node("vary-tabs")).getSelectionModel().select(1));
        await(() -> isThere("spread-stop"));
        robot().interact(() -> ((ButtonBase) node("spread-stop")).fire());
        settle();
        assertFalse(node("spread-progress").isVisible());
        work("spread-again");
        assertFalse(node("spread-again").isVisible());
    }
}
