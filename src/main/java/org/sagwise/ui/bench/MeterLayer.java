package org.sagwise.ui.bench;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import org.sagwise.interaction.Tool;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.ProbeBox;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.MeterCommands;
import org.sagwise.ui.workbench.Workbench;

/**
 * What can be taken hold of at the meter in the hand: its two probes and the letters of its dial.
 */
final class MeterLayer extends Pane {

    /** Side of the square around a letter, in bench units. */
    private static final double LETTER = 26;

    private final BenchModel bench;
    private final Commands commands;
    private final Wording wording;
    private final MeterTexts texts;
    private final Names names;

    MeterLayer(Workbench work, Commands commands, Wording wording) {
        this.bench = work.bench();
        this.commands = commands;
        this.wording = wording;
        this.texts = MeterTexts.in(wording.locale());
        this.names = Names.in(wording.locale());
        setPickOnBounds(false);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** Makes the nodes anew; the focus stays where it was. */
    void rebuild(Optional<ProbeBox> meter) {
        Optional<String> focused = nodes().stream()
                .filter(MeterNode::isFocused)
                .map(MeterNode::getId)
                .findFirst();
        getChildren().clear();
        meter.ifPresent(this::build);
        // One stop of the Tab key; arrows go on from there.
        nodes().forEach(node -> node.setFocusTraversable(nodes().indexOf(node) == 0));
        nodes().stream()
                .filter(node -> focused.equals(Optional.of(node.getId())))
                .forEach(MeterNode::requestFocus);
    }

    private void build(ProbeBox meter) {
        getChildren()
                .addAll(
                        probe(
                                "red",
                                meter.red().ref(),
                                meter.redHandle(),
                                commands.get("probe-red").action()),
                        probe(
                                "black",
                                meter.black().ref(),
                                meter.blackHandle(),
                                commands.get("probe-black").action()));
        for (MeterMode mode : MeterMode.values()) {
            getChildren().add(letter(mode, meter));
        }
    }

    private MeterNode probe(String colour, TerminalRef on, Line handle, Runnable take) {
        MeterNode node = new MeterNode(
                "probe-" + colour,
                handle.bounds(),
                wording.say("meter.probe.kind"),
                () -> wording.say("meter.probe." + colour, names.terminal(bench.scenario(), on)),
                take);
        node.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> node.requestFocus());
        return node;
    }

    private MeterNode letter(MeterMode mode, ProbeBox meter) {
        Point place = meter.letter(mode);
        double side = LETTER * meter.scale();
        MeterNode node = new MeterNode(
                "meter-" + mode.word(),
                new Box(place.x() - side / 2, place.y() - side / 2, side, side),
                wording.say("meter.dial.kind"),
                () -> tell(mode),
                commands.get(MeterCommands.turning(mode)).action());
        node.addEventHandler(MouseEvent.ANY, event -> turn(node, event));
        return node;
    }

    /** A click turns the dial, and means nothing else on the bench. */
    private static void turn(MeterNode node, MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY) {
            return;
        }
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED) {
            node.requestFocus();
        } else if (event.getEventType() == MouseEvent.MOUSE_CLICKED && event.isStillSincePress()) {
            node.act();
        }
        event.consume();
    }

    private String tell(MeterMode mode) {
        String word = wording.say("meter.mode." + mode.word());
        Optional<ProbeReading> shown = bench.assessment().readings().probes().filter(it -> it.mode() == mode);
        return shown.map(it -> wording.say(
                        "meter.dial.chosen",
                        word,
                        texts.figure(it.display()),
                        texts.sentence(it.display(), bench.scenario())))
                .orElseGet(() -> wording.say("meter.dial.other", word));
    }

    /** A probe that is in the hand is not found where it rested. */
    void lift(Tool tool) {
        String held = tool instanceof Tool.Tip tip ? "probe-" + colour(tip.probe()) : "";
        nodes().forEach(node -> node.setOpacity(node.getId().equals(held) ? 0 : 1));
    }

    private static String colour(Tool.Probe probe) {
        return probe == Tool.Probe.RED ? "red" : "black";
    }

    /** Tells what is shown now. */
    void retell() {
        nodes().forEach(MeterNode::retell);
    }

    void place(BenchView view) {
        nodes().forEach(node -> node.place(view));
    }

    private List<MeterNode> nodes() {
        return getChildren().stream().map(MeterNode.class::cast).toList();
    }

    private void key(KeyEvent event) {
        if (!(event.getTarget() instanceof MeterNode node) || event.isShortcutDown()) {
            return;
        }
        if (event.getCode() == KeyCode.ENTER) {
            node.act();
            event.consume();
        } else if (event.getCode().isArrowKey() && !event.isShiftDown()) {
            boolean back = event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.UP;
            int next = nodes().indexOf(node) + (back ? -1 : 1);
            nodes().get(Math.floorMod(next, nodes().size())).requestFocus();
            event.consume();
        }
    }
}
