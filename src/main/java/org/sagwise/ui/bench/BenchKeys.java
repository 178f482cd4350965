package org.sagwise.ui.bench;

import java.util.function.BooleanSupplier;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Tool;
import org.sagwise.part.MeterMode;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.workbench.MeterCommands;
import org.sagwise.ui.workbench.Workbench;

/**
 * The keys of hands at work, heard only while the bench has the focus. They go through the same
 * machine as the mouse.
 */
final class BenchKeys {

    private final TouchLayer touch;
    private final Workbench work;
    private final Commands commands;
    private final Runnable editor;
    private final BooleanSupplier refusesMoves;
    private final JointKeys joints;
    private final Node aside;
    private boolean noting;

    private BenchKeys(
            TouchLayer touch,
            Workbench work,
            Commands commands,
            Runnable editor,
            BooleanSupplier refusesMoves,
            Node aside) {
        this.refusesMoves = refusesMoves;
        this.joints = new JointKeys(touch, work);
        this.aside = aside;
        this.touch = touch;
        this.work = work;
        this.commands = commands;
        this.editor = editor;
    }

    /**
     * Listens to the keys.
     *
     * @param editor shows the card of what is chosen
     * @param refusesMoves says whether nothing can be moved now, and why to whoever sits there
     * @param aside where keys are meant for something else
     */
    static BenchKeys on(
            Node surface,
            TouchLayer touch,
            Workbench work,
            Commands commands,
            Runnable editor,
            BooleanSupplier refusesMoves,
            Node aside) {
        BenchKeys keys = new BenchKeys(touch, work, commands, editor, refusesMoves, aside);
        surface.addEventFilter(KeyEvent.KEY_PRESSED, keys::pressed);
        surface.addEventFilter(KeyEvent.KEY_TYPED, keys::typed);
        return keys;
    }

    private void pressed(KeyEvent event) {
        noting = false;
        boolean atMeter = event.getTarget() instanceof MeterNode;
        if (event.isAltDown()
                || isIn(aside, event.getTarget())
                || atMeter
                        && (event.getCode() == KeyCode.ENTER || event.getCode().isArrowKey())) {
            return;
        }
        boolean done = event.isShortcutDown()
                ? event.getCode().isArrowKey() && nudgeChosen(event)
                : isCarrying() && carry(event) || isReaching() && reach(event);
        if (!done && !event.isShortcutDown()) {
            done = act(event);
        }
        if (done) {
            event.consume();
        }
    }

    /** The letter that opens the slip for a note does not belong on it. */
    private void typed(KeyEvent event) {
        if (noting) {
            noting = false;
            event.consume();
        }
    }

    private void note() {
        run(commands.get("note"));
        noting = true;
    }

    private static boolean isIn(Node whole, EventTarget target) {
        for (Node at = target instanceof Node node ? node : null; at != null; at = at.getParent()) {
            if (at == whole) {
                return true;
            }
        }
        return false;
    }

    private boolean isCarrying() {
        Tool tool = work.hands().tool();
        return tool instanceof Tool.Fresh || tool instanceof Tool.Lifted || tool instanceof Tool.Slip;
    }

    private boolean isReaching() {
        return work.hands().tool() instanceof Tool.DraftLink
                || work.hands().tool() instanceof Tool.Gathered
                || work.hands().tool() instanceof Tool.Tip;
    }

    private boolean carry(KeyEvent event) {
        if (event.getCode().isArrowKey()) {
            nudge(event, event.isShiftDown() ? 1 : 2);
            return true;
        }
        if (event.getCode() == KeyCode.ENTER) {
            hands().drop();
            hands().chosen().parts().stream().findFirst().ifPresent(work.ground()::focusPart);
            return true;
        }
        return false;
    }

    private boolean reach(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            if (hands().tool() instanceof Tool.Gathered) {
                hands().plate();
            } else {
                touch.focused().flatMap(TouchNode::terminal).ifPresent(this::put);
            }
            return true;
        }
        boolean away = event.getCode() == KeyCode.DELETE || event.getCode() == KeyCode.BACK_SPACE;
        if (away && hands().tool() instanceof Tool.Tip) {
            hands().putAway();
            return true;
        }
        return false;
    }

    private void put(TerminalRef end) {
        touch.reachFor(end);
        hands().drop();
    }

    private boolean act(KeyEvent event) {
        switch (event.getCode()) {
            case R -> run(commands.get("turn"));
            case F -> run(commands.get("flip"));
            case M -> run(commands.get("move"));
            case DELETE, BACK_SPACE -> run(commands.get("delete"));
            case J -> pull(event);
            case P ->
                (event.isShiftDown() ? commands.get("probe-black") : commands.get("probe-red"))
                        .action()
                        .run();
            case V -> meter(MeterMode.VOLTS).action().run();
            case A -> meter(MeterMode.AMPS).action().run();
            case O -> meter(MeterMode.OHMS).action().run();
            case W -> commands.get("write-down").action().run();
            case N -> note();
            case L -> joints.choose();
            case ENTER -> {
                chooseFocused();
                if (event.isShiftDown()) {
                    touch.focusedPart().ifPresent(hands()::toggle);
                } else {
                    (hands().chosen().notes().isEmpty()
                                    ? editor
                                    : commands.get("note").action())
                            .run();
                }
            }
            case ESCAPE -> let();
            default -> {
                return enter(event);
            }
        }
        return true;
    }

    /** Arrows on the felt lead to a part, not off the bench: undo leaves the focus there, and so does a click. */
    private boolean enter(KeyEvent event) {
        boolean lost = event.getCode().isArrowKey()
                && !event.isShiftDown()
                && touch.focused().isEmpty();
        if (lost) {
            touch.enter();
        }
        return lost;
    }

    private void let() {
        if (hands().isBusy()) {
            hands().cancel();
        } else {
            hands().choose(Selection.NOTHING);
            work.bench().spotlight().show(Selection.NOTHING);
        }
    }

    private void run(Command command) {
        if (!hands().isBusy()) {
            chooseFocused();
        }
        command.action().run();
    }

    /**
     * Keys are meant for what is in focus, unless it is one of several that are chosen, or a joint
     * of it is.
     */
    void chooseFocused() {
        Selection chosen = hands().chosen();
        touch.focused()
                .map(node -> node.what().lit())
                .filter(lit -> !chosen.covers(lit) && !joints.isChosen())
                .ifPresent(hands()::choose);
    }

    /** Begins a joint; with Shift, or once terminals are collected, collects one for a plate. */
    private void pull(KeyEvent event) {
        boolean gathers = event.isShiftDown() || hands().tool() instanceof Tool.Gathered;
        touch.focusedTerminal().ifPresent(gathers ? hands()::gather : touch::pullFrom);
    }

    private boolean nudgeChosen(KeyEvent event) {
        chooseFocused();
        if (refusesMoves.getAsBoolean()) {
            return true;
        }
        nudge(event, event.isShiftDown() ? 1 : 2);
        return true;
    }

    private void nudge(KeyEvent event, int steps) {
        switch (event.getCode()) {
            case LEFT -> hands().nudge(-steps, 0);
            case RIGHT -> hands().nudge(steps, 0);
            case UP -> hands().nudge(0, -steps);
            default -> hands().nudge(0, steps);
        }
    }

    private Command meter(MeterMode mode) {
        return commands.get(MeterCommands.turning(mode));
    }

    private BenchInteraction hands() {
        return work.hands();
    }
}
