package org.sagwise.ui.gui;

import javafx.geometry.Bounds;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.BeforeEach;

/** A test that builds on an empty bench, by mouse and by keyboard. */
abstract class BenchInteractionGuiTest extends GuiTest {

    static final String CELL = "shelf-inr18650-2500-20A";
    static final String COIL = "shelf-coil-1ohm-40W";
    static final String BUTTON = "shelf-button";

    @BeforeEach
    void openABench() throws Exception {
        open();
        robot().push(KeyCode.CONTROL, KeyCode.N);
        settle();
        robot().clickOn("#tab-shelf");
        settle();
    }

    /** Drags something from the shelf to a place on the bench, in parts of its size. */
    void drag(String good, double x, double y) {
        find(good);
        robot().drag("#" + good, MouseButton.PRIMARY);
        Bounds bench = boundsOf("bench");
        double toX = bench.getMinX() + x * bench.getWidth();
        double toY = bench.getMinY() + y * bench.getHeight();
        robot().moveTo(toX, toY).drop();
        settle();
    }

    /** The shelf is long; a search brings what is wanted to where it can be seen. */
    void find(String good) {
        robot().clickOn("#shelf-search").push(KeyCode.CONTROL, KeyCode.A);
        robot().write(wordsFor(good));
        settle();
    }

    static String wordsFor(String good) {
        return switch (good) {
            case CELL -> "INR 18650 2500";
            case COIL -> "1 40 W";
            default -> "button";
        };
    }

    Bounds boundsOf(String id) {
        return node(id).localToScreen(node(id).getBoundsInLocal());
    }

    void join(String one, String other) {
        robot().clickOn("#terminal-" + one).clickOn("#terminal-" + other);
        settle();
    }

    void open(String part) {
        robot().clickOn("#part-" + part).push(KeyCode.ENTER);
        settle();
    }

    void fill(String field, String value) {
        robot().interact(() -> node("field-" + field).requestFocus());
        robot().push(KeyCode.CONTROL, KeyCode.A).write(value).push(KeyCode.ENTER);
        settle();
    }

    /** Space fires from anywhere but a field in which one types. */
    String firedWatts() {
        openReadings();
        robot().interact(() -> node("bench").requestFocus());
        robot().press(KeyCode.SPACE);
        settle();
        String watts = text("ledger-coils-watts");
        robot().release(KeyCode.SPACE);
        settle();
        return watts;
    }
}
