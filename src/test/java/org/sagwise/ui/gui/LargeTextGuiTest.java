package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.ui.MenuItems;
import org.testfx.util.WaitForAsyncUtils;

/** Words that must be read whole in small windows and with large text. */
class LargeTextGuiTest extends GuiTest {

    private void openAt(String language, int width, int height, int percent) throws Exception {
        openWith(String.format(
                Locale.ROOT,
                "{\"notice_read\": 1000, \"language\": \"%s\", \"looks\": \"light\", \"text_percent\": %d,"
                        + " \"window\": {\"x\": 0, \"y\": 0, \"width\": %d, \"height\": %d}}",
                language,
                percent,
                width,
                height));
    }

    @ParameterizedTest
    @CsvSource({"en, 1024, 640, 200", "de, 1024, 640, 200", "de, 1280, 720, 150", "en, 1280, 720, 100"})
    void curves_nameTheirQuantitiesAndKeepInside(String language, int width, int height, int percent) throws Exception {
        openAt(language, width, height, percent);
        openReadings();
        robot().push(KeyCode.F4);
        settle();
        robot().push(KeyCode.SHIFT, KeyCode.F4);
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> isThere("halt-close"));
        work("halt-close");
        settle();

        assertTrue(node("curves").isVisible());
        Bounds drawer = node("curves").localToScene(node("curves").getLayoutBounds());
        assertAll(Stream.concat(
                        node("curves").lookupAll(".plot-title").stream(),
                        node("curves").lookupAll(".run-down-form").stream())
                .map(piece -> within(drawer, piece)));
        assertEquals(4, node("curves").lookupAll(".plot-title").size());
        node("curves").lookupAll(".plot").forEach(plot -> {
            Bounds area = plot.getLayoutBounds();
            assertTrue(area.getWidth() >= 0.9 * percent, "width " + area);
            assertTrue(area.getHeight() >= 0.55 * percent, "height " + area);
        });
    }

    private static Executable within(Bounds drawer, Node piece) {
        Bounds place = piece.localToScene(piece.getLayoutBounds());
        return () -> {
            assertTrue(place.getMaxX() <= drawer.getMaxX(), piece + " beyond the drawer");
            if (piece instanceof Label title) {
                assertTrue(title.getWidth() >= Math.floor(title.prefWidth(-1)), title.getText() + " is cut");
            }
        };
    }

    @ParameterizedTest
    @CsvSource({
        "en, 1280, 720, 100", "en, 1024, 640, 100", "en, 1280, 720, 125", "en, 1024, 640, 150", "en, 1024, 640, 200",
        "de, 1280, 720, 100", "de, 1024, 640, 100", "de, 1280, 720, 125", "de, 1024, 640, 150", "de, 1024, 640, 200"
    })
    void lineUnderTheBench_asksInWordsThatFit(String language, int width, int height, int percent) throws Exception {
        openAt(language, width, height, percent);
        openReadings();
        Label line = (Label) node("status-line");
        double room = line.getWidth() - line.snappedLeftInset() - line.snappedRightInset();
        ResourceBundle texts = ResourceBundle.getBundle(
                "org.sagwise.texts.ui", Locale.forLanguageTag(language.equals("en") ? "" : language));

        assertTrue(width(line, line.getText()) <= room, line.getText());
        assertAll(texts.keySet().stream()
                .filter(key -> key.startsWith("status.") && key.endsWith(".brief"))
                .map(key -> MessageFormat.format(texts.getString(key), "B +"))
                .map(words -> () -> assertTrue(width(line, words) <= room, words + ": room " + room)));
    }

    @ParameterizedTest
    @CsvSource({"en, 100", "de, 150"})
    void choiceOfAPack_inASmallWindow_hasItsButtonInSight(String language, int percent) throws Exception {
        openAt(language, 1024, 640, percent);
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
        settle();

        Node button = node("choice-do");
        Bounds place = button.localToScene(button.getLayoutBounds());
        Bounds form = node("choice")
                .lookup(".choice-form")
                .localToScene(node("choice").lookup(".choice-form").getLayoutBounds());
        assertTrue(place.getMinY() >= form.getMaxY(), place + " is rolled with " + form);
        assertTrue(place.getMaxY() <= button.getScene().getHeight(), place.toString());
        assertTrue(form.getHeight() >= 100, form.toString());
    }

    /** A small screen has 640 pixels, of which the window manager takes some. */
    @ParameterizedTest
    @CsvSource({"en", "de"})
    void about_onASmallScreen_hasItsButtonInSight(String language) throws Exception {
        openAt(language, 1024, 640, 100);
        Platform.runLater(() -> MenuItems.item(node("menus"), "item-about").fire());
        settle();

        assertTrue(node("about-dialog").getScene().getWindow().getHeight() <= 600, "too high");
    }

    private static double width(Label line, String words) {
        Text measured = new Text(words);
        measured.setFont(line.getFont());
        return Math.ceil(measured.getLayoutBounds().getWidth());
    }
}
