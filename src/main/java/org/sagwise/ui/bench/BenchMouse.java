package org.sagwise.ui.bench;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Surface;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.workbench.Workbench;

/**
 * The mouse on the bench. A drag takes hold and lets go; a click takes hold of what is joined or
 * carried until the next click, so that nothing needs a drag.
 */
final class BenchMouse {

    /** Farther than this a press becomes a drag, in pixels. */
    private static final double SLACK = 5;

    /** Within this distance a terminal is meant, in pixels. */
    private static final double REACH = 14;

    /** A probe finds its terminal from farther away. */
    private static final double PROBE_REACH = 30;

    /** Within this distance the handle of a probe is meant, in pixels. */
    private static final double HANDLE_REACH = 12;

    private final Node surface;
    private final Workbench work;
    private final ViewModel view;
    private final LinkPointer.Finder links;
    private final Runnable editor;
    private final Runnable noteEditor;
    private Point pressed;
    private boolean dragging;

    private BenchMouse(
            Node surface,
            Workbench work,
            ViewModel view,
            LinkPointer.Finder links,
            Runnable editor,
            Runnable noteEditor) {
        this.noteEditor = noteEditor;
        this.surface = surface;
        this.work = work;
        this.view = view;
        this.links = links;
        this.editor = editor;
    }

    /**
     * Listens to the mouse.
     *
     * @param editor shows the card of what is chosen
     * @param noteEditor lets the chosen note be written
     */
    static BenchMouse on(
            Node surface,
            Workbench work,
            ViewModel view,
            LinkPointer.Finder links,
            Runnable editor,
            Runnable noteEditor) {
        BenchMouse mouse = new BenchMouse(surface, work, view, links, editor, noteEditor);
        surface.addEventHandler(MouseEvent.MOUSE_PRESSED, mouse::press);
        surface.addEventHandler(MouseEvent.MOUSE_DRAGGED, mouse::drag);
        surface.addEventHandler(MouseEvent.MOUSE_RELEASED, mouse::release);
        surface.addEventHandler(MouseEvent.MOUSE_MOVED, mouse::move);
        return mouse;
    }

    /** Chooses what lies at a point of the view, unless it is one of several that are chosen. */
    void chooseAt(double x, double y) {
        Selection there = meantAt(x, y);
        if (there.isNothing() || !hands().chosen().covers(there)) {
            hands().choose(there);
        }
    }

    private Selection meantAt(double x, double y) {
        Point at = bench(x, y);
        OptionalInt note = noteAt(at);
        Optional<String> part = partAt(at);
        OptionalInt link = links.linkAt(x, y);
        if (note.isPresent()) {
            return Selection.note(note.getAsInt());
        }
        return part.map(Selection::part)
                .orElseGet(() -> link.isPresent() ? Selection.link(link.getAsInt()) : Selection.NOTHING);
    }

    private void press(MouseEvent event) {
        pressed = null;
        dragging = false;
        if (event.getButton() == MouseButton.PRIMARY) {
            pressed = new Point(event.getX(), event.getY());
            if (event.getTarget() == surface) {
                surface.requestFocus();
            }
        }
    }

    private void move(MouseEvent event) {
        if (hands().isBusy()) {
            moveTo(event);
        }
    }

    private void moveTo(MouseEvent event) {
        Point at = bench(event.getX(), event.getY());
        hands().moveTo(at.x(), at.y(), reach(hands(), view.get()));
    }

    /** How far the hand looks for a terminal, bench units. */
    static double reach(BenchInteraction hands, BenchView view) {
        return (hands.tool() instanceof Tool.Tip ? PROBE_REACH : REACH) / view.scale();
    }

    private void drag(MouseEvent event) {
        if (pressed == null) {
            return;
        }
        if (!dragging && pressed.distance(new Point(event.getX(), event.getY())) > SLACK) {
            dragging = true;
            if (!hands().isBusy()) {
                takeHold(event);
            }
        }
        if (dragging) {
            moveTo(event);
        }
    }

    private void takeHold(MouseEvent event) {
        Point from = bench(pressed.x(), pressed.y());
        Optional<TerminalRef> terminal = terminalAt(from).filter(BenchMouse::begins);
        Optional<String> part = partAt(from);
        OptionalInt note = noteAt(from);
        work.bench().button().release(FireButtonState.Hold.MOUSE);
        Optional<Tool.Probe> probe = probeAt(from);
        if (probe.isPresent()) {
            hands().takeProbe(probe.get(), from.x(), from.y());
        } else if (note.isPresent()) {
            hands().choose(Selection.note(note.getAsInt()));
            hands().lift(from.x(), from.y());
        } else if (terminal.isPresent()) {
            hands().pull(terminal.get(), from.x(), from.y());
        } else if (part.isPresent()) {
            if (!hands().chosen().parts().contains(part.get())) {
                hands().choose(Selection.part(part.get()));
            }
            hands().lift(from.x(), from.y());
        } else {
            hands().frame(
                            from.x(),
                            from.y(),
                            event.isShiftDown() ? hands().chosen().parts() : Set.of());
        }
    }

    private void release(MouseEvent event) {
        if (pressed == null || event.getButton() != MouseButton.PRIMARY) {
            return;
        }
        pressed = null;
        if (dragging) {
            moveTo(event);
            letGo(event);
        } else {
            click(event);
        }
        dragging = false;
    }

    /** What cannot be let go here goes back; with Shift, a joint goes on to further terminals. */
    private void letGo(MouseEvent event) {
        if (event.isShiftDown()
                && hands().tool() instanceof Tool.DraftLink lead
                && lead.over().isPresent()) {
            hands().gather(lead.over().get());
        } else if (!hands().drop() && !(hands().tool() instanceof Tool.Gathered)) {
            hands().cancel();
        }
    }

    private boolean isGathering(MouseEvent event) {
        Tool tool = hands().tool();
        return event.isShiftDown()
                && (tool instanceof Tool.Nothing || tool instanceof Tool.DraftLink || tool instanceof Tool.Gathered);
    }

    private void click(MouseEvent event) {
        Point at = bench(event.getX(), event.getY());
        Optional<TerminalRef> terminal = terminalAt(at);
        Optional<String> part = partAt(at);
        OptionalInt link = links.linkAt(event.getX(), event.getY());
        OptionalInt note = noteAt(at);
        Optional<Tool.Probe> probe = probeAt(at);
        if (terminal.isPresent() && isGathering(event)) {
            hands().gather(terminal.get());
        } else if (hands().isBusy()) {
            moveTo(event);
            hands().drop();
        } else if (probe.isPresent()) {
            hands().takeProbe(probe.get(), at.x(), at.y());
        } else if (note.isPresent()) {
            hands().choose(Selection.note(note.getAsInt()));
        } else if (terminal.filter(BenchMouse::begins).isPresent()) {
            hands().pull(terminal.get(), at.x(), at.y());
        } else if (part.isPresent() && event.isShiftDown()) {
            hands().toggle(part.get());
        } else if (part.isPresent()) {
            hands().choose(Selection.part(part.get()));
        } else if (link.isPresent()) {
            hands().choose(Selection.link(link.getAsInt()));
        } else if (!event.isShiftDown()) {
            hands().choose(Selection.NOTHING);
            work.bench().spotlight().show(Selection.NOTHING);
        }
        if (event.getClickCount() == 2 && hands().tool() == Tool.NOTHING) {
            (note.isPresent() ? noteEditor : editor).run();
        }
    }

    /**
     * Whether a joint can begin at a terminal without more ado. The side of a cell lies on the cell
     * itself: whoever takes hold there means the cell. A joint can end there, and Shift or J begin
     * one.
     */
    private static boolean begins(TerminalRef terminal) {
        return !terminal.isCan();
    }

    private BenchInteraction hands() {
        return work.hands();
    }

    private Point bench(double x, double y) {
        return view.get().toBench(x, y);
    }

    private Optional<TerminalRef> terminalAt(Point at) {
        return seen().terminalAt(at.x(), at.y(), REACH / view.get().scale());
    }

    private Optional<Tool.Probe> probeAt(Point at) {
        return seen().probeAt(at.x(), at.y(), HANDLE_REACH / view.get().scale());
    }

    private Surface seen() {
        return new Surface(work.bench().scenario(), work.ground().seen());
    }

    private OptionalInt noteAt(Point at) {
        return work.ground()
                .seen()
                .noteAt(at.x(), at.y())
                .map(note -> OptionalInt.of(note.index()))
                .orElse(OptionalInt.empty());
    }

    private Optional<String> partAt(Point at) {
        return work.ground().seen().partAt(at.x(), at.y()).map(box -> box.id());
    }
}
