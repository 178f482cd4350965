package org.sagwise.ui;

import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;

/** What stands in the menus of the window, those of submenus too. */
public final class MenuItems {

    private MenuItems() {}

    /** All that can be chosen in a bar. */
    public static Stream<MenuItem> all(Node bar) {
        return ((MenuBar) bar).getMenus().stream().flatMap(MenuItems::within);
    }

    /** The one with an id. */
    public static MenuItem item(Node bar, String id) {
        return all(bar).filter(item -> id.equals(item.getId())).findFirst().orElseThrow();
    }

    private static Stream<MenuItem> within(MenuItem item) {
        return item instanceof Menu menu ? menu.getItems().stream().flatMap(MenuItems::within) : Stream.of(item);
    }
}
