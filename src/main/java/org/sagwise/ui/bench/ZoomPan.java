package org.sagwise.ui.bench;

import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;

/**
 * Zooms and pans by wheel, pinch, drag and keys: the wheel with the shortcut key and two fingers
 * zoom; the wheel alone and dragging with the middle or right button pan; Shift with the arrows
 * pans as well.
 */
final class ZoomPan {

    private static final double WHEEL = 1.0015;

    private final Node surface;
    private final ViewModel view;
    private double lastX;
    private double lastY;
    private boolean dragging;

    private ZoomPan(Node surface, ViewModel view) {
        this.surface = surface;
        this.view = view;
    }

    static void on(Node surface, ViewModel view) {
        ZoomPan hands = new ZoomPan(surface, view);
        surface.addEventHandler(ScrollEvent.SCROLL, hands::scrolled);
        surface.addEventHandler(ZoomEvent.ZOOM, hands::pinched);
        surface.addEventHandler(MouseEvent.MOUSE_PRESSED, hands::pressed);
        surface.addEventHandler(MouseEvent.MOUSE_DRAGGED, hands::dragged);
        surface.addEventHandler(MouseEvent.MOUSE_RELEASED, hands::released);
        surface.addEventHandler(KeyEvent.KEY_PRESSED, hands::key);
    }

    private void scrolled(ScrollEvent event) {
        if (event.isShortcutDown()) {
            view.zoom(Math.pow(WHEEL, event.getDeltaY()), event.getX(), event.getY());
        } else {
            view.pan(event.getDeltaX(), event.getDeltaY());
        }
        event.consume();
    }

    private void pinched(ZoomEvent event) {
        view.zoom(event.getZoomFactor(), event.getX(), event.getY());
        event.consume();
    }

    private void pressed(MouseEvent event) {
        dragging = event.getButton() == MouseButton.MIDDLE || event.getButton() == MouseButton.SECONDARY;
        lastX = event.getX();
        lastY = event.getY();
    }

    private void dragged(MouseEvent event) {
        if (dragging) {
            surface.setCursor(Cursor.CLOSED_HAND);
            view.pan(event.getX() - lastX, event.getY() - lastY);
            lastX = event.getX();
            lastY = event.getY();
        }
    }

    private void released(MouseEvent event) {
        dragging = false;
        surface.setCursor(Cursor.DEFAULT);
    }

    private void key(KeyEvent event) {
        if (!event.isShiftDown() || event.isShortcutDown() || !event.getCode().isArrowKey()) {
            return;
        }
        switch (event.getCode()) {
            case LEFT -> view.look(-1, 0);
            case RIGHT -> view.look(1, 0);
            case UP -> view.look(0, -1);
            default -> view.look(0, 1);
        }
        event.consume();
    }
}
