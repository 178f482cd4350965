package org.sagwise.ui.bench;

import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.workbench.Workbench;

/** What can be done with what lies under the mouse, or is in focus, in a menu beside it. */
final class BenchContextMenu {

    private final TouchLayer touch;
    private final Workbench work;
    private final BenchMouse mouse;
    private final BenchKeys keys;
    private final ContextMenu menu = new ContextMenu();

    private BenchContextMenu(TouchLayer touch, Workbench work, BenchMouse mouse, BenchKeys keys) {
        this.touch = touch;
        this.work = work;
        this.mouse = mouse;
        this.keys = keys;
    }

    static void on(
            Node surface,
            TouchLayer touch,
            Workbench work,
            BenchMouse mouse,
            BenchKeys keys,
            Commands commands,
            Controls controls) {
        BenchContextMenu bench = new BenchContextMenu(touch, work, mouse, keys);
        bench.menu.setId("bench-menu");
        bench.menu.getItems().setAll(controls.items("on-the-bench", commands, Map.of()));
        surface.addEventHandler(MouseEvent.MOUSE_CLICKED, bench::clicked);
        surface.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, bench::asked);
    }

    /** The right button moves the view when it is dragged; a click asks for the menu. */
    private void clicked(MouseEvent event) {
        if (event.getButton() == MouseButton.SECONDARY
                && event.isStillSincePress()
                && !work.hands().isBusy()) {
            mouse.chooseAt(event.getX(), event.getY());
            show(event.getScreenX(), event.getScreenY());
        }
    }

    private void asked(ContextMenuEvent event) {
        if (event.isKeyboardTrigger() && !work.hands().isBusy()) {
            touch.focused().ifPresent(node -> {
                keys.chooseFocused();
                Bounds at = node.localToScreen(node.getLayoutBounds());
                show(at.getCenterX(), at.getCenterY());
            });
        }
        event.consume();
    }

    private void show(double x, double y) {
        if (!work.hands().chosen().isNothing()) {
            menu.show(touch, x, y);
        }
    }
}
