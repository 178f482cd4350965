package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** What a screen reader and a keyboard find. */
class AccessGuiTest extends GuiTest {

    @Test
    void touchNodes_everyPartAndTerminal_haveRoleTextAndSize() throws Exception {
        open();
        for (String id : List.of(
                "part-A",
                "part-B",
                "part-fire",
                "part-coil",
                "terminal-A-plus",
                "terminal-A-minus",
                "terminal-coil-1",
                "terminal-fire-2")) {
            Node node = node(id);
            assertEquals(AccessibleRole.BUTTON, node.getAccessibleRole(), id);
            String text = (String) node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
            assertTrue(text != null && text.contains("V"), id + ": " + text);
            assertTrue(((Region) node).getWidth() >= 24, id);
            assertTrue(((Region) node).getHeight() >= 24, id);
        }
    }

    @Test
    void window_everythingThatTakesTheFocus_saysWhatItIs() throws Exception {
        open();
        Set<Node> all = node("bench").getScene().getRoot().lookupAll("*");
        for (Node node : all) {
            if (node.isFocusTraversable() && isShown(node)) {
                assertNotNull(node.getAccessibleRole(), node.toString());
                assertTrue(!spoken(node).isBlank(), node + " says nothing");
            }
        }
    }

    private static boolean isShown(Node node) {
        return node.isVisible() && (node.getParent() == null || isShown(node.getParent()));
    }

    private static String spoken(Node node) {
        if (node.queryAccessibleAttribute(AccessibleAttribute.TEXT) instanceof String text) {
            return text;
        }
        return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    @Test
    void tab_onTheBench_goesFromPartToPartAndOff() throws Exception {
        open();
        robot().interact(() -> node("part-A").requestFocus());
        for (String next : List.of("part-B", "part-fire", "part-coil", "probe-red")) {
            robot().push(KeyCode.TAB);
            settle();
            assertTrue(node(next).isFocused(), next);
        }
        robot().push(KeyCode.TAB);
        settle();
        assertTrue(node("staircase").isFocused());
    }

    /** Where it is the last of all nodes already, the key is not handed on to it once more. */
    @Test
    void tab_onTheLastTerminal_leavesTheBench() throws Exception {
        open();
        robot().interact(() -> node("terminal-coil-2").requestFocus());
        robot().push(KeyCode.TAB);
        settle();

        assertTrue(node("probe-red").isFocused());
    }

    @Test
    void arrows_onTheBench_goToWhatLiesThatWay() throws Exception {
        open();
        robot().interact(() -> node("part-A").requestFocus());
        robot().push(KeyCode.UP);
        settle();

        assertTrue(node("terminal-A-plus").isFocused());
    }

    /** Undo takes the part in focus away and leaves the focus on the felt. */
    @Test
    void arrows_onTheFelt_leadToAPartAndNotOffTheBench() throws Exception {
        open();
        robot().interact(() -> node("bench").requestFocus());
        robot().push(KeyCode.LEFT);
        settle();
        assertTrue(node("part-A").isFocused());
    }

    @Test
    void window_inGerman_speaksGerman() throws Exception {
        openIn("de");

        assertEquals("Taster offen", text("fire-state"));
        assertTrue(text("limit-A").startsWith("0,00 A von"), text("limit-A"));
        String coil = spoken(node("part-coil"));
        assertTrue(coil.startsWith("Wicklung"), coil);
    }
}
