package org.sagwise.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Window;

/** Works the window for the walks that take pictures of it: by the ids of its buttons and menu items. */
final class WindowHands {

    private WindowHands() {}

    static void press(String id) {
        ((ButtonBase) node(id)).fire();
    }

    static void choose(String id) {
        choose(id, menus().getMenus().stream());
    }

    /** Chooses an item of a button that unfolds. */
    static void chooseIn(String button, String id) {
        choose(id, ((MenuButton) node(button)).getItems().stream());
    }

    private static void choose(String id, Stream<? extends MenuItem> menu) {
        MenuItem item = menu.flatMap(WindowHands::items)
                .filter(each -> id.equals(each.getId()))
                .findFirst()
                .orElseThrow();
        Platform.runLater(item::fire);
    }

    private static Stream<MenuItem> items(MenuItem item) {
        return item instanceof Menu menu ? menu.getItems().stream().flatMap(WindowHands::items) : Stream.of(item);
    }

    static Optional<Node> find(String id) {
        return Window.getWindows().stream()
                .map(window -> window.getScene().getRoot().lookup("#" + id))
                .filter(found -> found != null)
                .findFirst();
    }

    static Node node(String id) {
        return find(id).orElseThrow(() -> new IllegalStateException("nothing is called " + id));
    }

    static void closeTop() {
        List<Window> windows = Window.getWindows();
        Window top = windows.get(windows.size() - 1);
        if (windows.size() > 1) {
            top.hide();
        }
    }

    /** Clicks on it with the mouse, as one does who wants to choose it. */
    static void click(String id) {
        Node node = node(id);
        Bounds place = node.localToScreen(node.getBoundsInLocal());
        Robot robot = new Robot();
        robot.mouseMove(place.getCenterX(), place.getCenterY());
        robot.mouseClick(MouseButton.PRIMARY);
    }

    /** Closes every window beside the main one, and its menus. */
    static void closeAll() {
        menus().getMenus().forEach(Menu::hide);
        List<Window> windows = List.copyOf(Window.getWindows());
        windows.subList(1, windows.size()).forEach(Window::hide);
    }

    /** Opens a menu of the bar. */
    static void unfold(String id) {
        menus().getMenus().stream()
                .filter(menu -> id.equals(menu.getId()))
                .findFirst()
                .orElseThrow()
                .show();
    }

    private static MenuBar menus() {
        return (MenuBar) node("menus");
    }
}
