package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.MenuItems;

/** The keys of the window: each does one thing, and each is told of. */
class KeysGuiTest extends GuiTest {

    /** What the bench itself, the menus and editors of text do with keys. */
    private static final Set<KeyCode> TAKEN = EnumSet.of(
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.LEFT,
            KeyCode.RIGHT,
            KeyCode.ENTER,
            KeyCode.TAB,
            KeyCode.SPACE,
            KeyCode.ESCAPE,
            KeyCode.DELETE,
            KeyCode.BACK_SPACE,
            KeyCode.F10);

    @BeforeEach
    void openTheWindow() throws Exception {
        open();
    }

    @Test
    void menus_keys_areEachBoundOnce() {
        List<MenuItem> items = itemsWithKeys();
        List<String> twice = items.stream().collect(Collectors.groupingBy(KeysGuiTest::keys)).values().stream()
                .filter(same -> same.size() > 1)
                .map(same -> keys(same.get(0)) + ": " + ids(same))
                .toList();

        assertTrue(items.size() > 30, "only " + ids(items));
        assertEquals(List.of(), twice);
    }

    @Test
    void menus_keys_leaveOthersWhatTheyNeed() {
        for (MenuItem item : itemsWithKeys()) {
            KeyCodeCombination keys = (KeyCodeCombination) item.getAccelerator();
            boolean alt = keys.getAlt() == KeyCombination.ModifierValue.DOWN;
            boolean shortcut = keys.getShortcut() == KeyCombination.ModifierValue.DOWN;

            assertTrue(alt || !TAKEN.contains(keys.getCode()), item.getId() + " takes " + keys(item));
            assertTrue(
                    alt || shortcut || keys.getCode().isFunctionKey(),
                    item.getId() + " takes a key that writes: " + keys(item));
        }
    }

    @Test
    void help_onKeys_tellsOfAllKeysOfTheMenusAndOfNoneTwice() {
        robot().push(KeyCode.CONTROL, KeyCode.F1);
        settle();
        List<String> told = robot().lookup("#keys-dialog .key").queryAllAs(Label.class).stream()
                .map(Label::getText)
                .toList();

        assertEquals(told.stream().distinct().toList(), told);
        for (MenuItem item : itemsWithKeys()) {
            assertTrue(told.contains(keys(item)), item.getId() + " by " + keys(item));
        }
    }

    private List<MenuItem> itemsWithKeys() {
        return MenuItems.all(node("menus"))
                .filter(item -> item.getAccelerator() != null)
                .toList();
    }

    /** As people read them: the same keys may be written in more than one way. */
    private static String keys(MenuItem item) {
        return item.getAccelerator().getDisplayText();
    }

    private static List<String> ids(List<MenuItem> items) {
        return items.stream().map(MenuItem::getId).toList();
    }
}
