package org.sagwise.ui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.workbench.Workbench;

/** Moves the focus over the bench by keys. */
final class TouchKeys {

    /** Few joints go to a cell's bare side: arrows lead there only where nothing else is near. */
    private static final double CAN_LAST = 3;

    private final TouchLayer layer;
    private final Workbench work;

    TouchKeys(TouchLayer layer, Workbench work) {
        this.layer = layer;
        this.work = work;
    }

    /** Leads from the felt to the first part or note. */
    void enter() {
        layer.stops().stream().findFirst().ifPresent(this::goTo);
    }

    void pressed(KeyEvent event) {
        Optional<TouchNode> from = layer.focused();
        boolean forwarded = from.isPresent() && event.getTarget() != from.get();
        if (from.isEmpty() || forwarded || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        if (event.getCode() == KeyCode.TAB) {
            tab(from.get(), event);
        } else if (event.getCode().isArrowKey() && !event.isShiftDown()) {
            nearest(from.get(), event.getCode()).ifPresent(this::goTo);
            event.consume();
        }
    }

    /** A part that keys lead to is chosen; what is in the hand comes along to a terminal. */
    private void goTo(TouchNode node) {
        node.requestFocus();
        if (work.hands().isBusy()) {
            node.terminal().ifPresent(layer::reachFor);
        } else if (node.terminal().isEmpty()) {
            work.hands().choose(node.what().lit());
        }
    }

    /** From stop to stop; from the last one, or the first one backwards, off the bench. */
    private void tab(TouchNode from, KeyEvent event) {
        List<TouchNode> stops = layer.stops();
        int at = stops.indexOf(stopOf(from, stops));
        int next = event.isShiftDown() ? at - 1 : at + 1;
        if (next >= 0 && next < stops.size()) {
            goTo(stops.get(next));
            event.consume();
        } else if (next >= stops.size()) {
            // Terminals stand among the nodes too: leave from the last node of all.
            TouchNode last = layer.nodes().get(layer.nodes().size() - 1);
            if (last != from) {
                event.consume();
                last.fireEvent(event.copyFor(last, last));
            }
        }
    }

    private static TouchNode stopOf(TouchNode node, List<TouchNode> stops) {
        return stops.stream().filter(node::belongsTo).findFirst().orElse(node);
    }

    private Optional<TouchNode> nearest(TouchNode from, KeyCode key) {
        Comparator<TouchNode> byDistance = Comparator.comparingDouble(to -> cost(from, to, key));
        boolean joining = work.hands().isBusy();
        return layer.nodes().stream()
                .filter(to -> !joining || to.terminal().isPresent())
                .filter(to -> ahead(from, to, key) > 1)
                .min(byDistance);
    }

    /** How far a node lies in the direction of a key, in pixels. */
    private static double ahead(TouchNode from, TouchNode to, KeyCode key) {
        Bounds here = from.getBoundsInParent();
        Bounds there = to.getBoundsInParent();
        double dx = there.getCenterX() - here.getCenterX();
        double dy = there.getCenterY() - here.getCenterY();
        return switch (key) {
            case LEFT -> -dx;
            case RIGHT -> dx;
            case UP -> -dy;
            default -> dy;
        };
    }

    /** Distance, where going aside counts double, so that arrows go straight where they can. */
    private static double cost(TouchNode from, TouchNode to, KeyCode key) {
        boolean sideways = key == KeyCode.LEFT || key == KeyCode.RIGHT;
        double aside = Math.abs(sideways ? ahead(from, to, KeyCode.DOWN) : ahead(from, to, KeyCode.RIGHT));
        double way = ahead(from, to, key) + 2 * aside;
        return isCan(to) ? CAN_LAST * way : way;
    }

    private static boolean isCan(TouchNode node) {
        return node.terminal().filter(TerminalRef::isCan).isPresent();
    }
}
