package org.sagwise.ui.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import org.sagwise.interaction.Selection;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/**
 * The touch nodes over the bench: one for each part, one for each terminal, one for each note. Tab
 * goes from part to part and on to the notes, arrows go to whatever lies that way.
 */
final class TouchLayer extends Pane {

    private static final Map<String, String> TERMINAL_WORDS = Map.of(
            "+", "plus", "-", "minus", "in+", "in-plus", "in-", "in-minus", "out+", "out-plus", "out-", "out-minus");

    private final BenchModel bench;
    private final TouchKeys keys;
    private final Workbench work;
    private final PartTexts texts;
    private final Wording wording;
    private final List<TouchNode> stops = new ArrayList<>();

    TouchLayer(Workbench work, Wording wording) {
        this.work = work;
        this.bench = work.bench();
        this.wording = wording;
        this.texts = new PartTexts(wording);
        setPickOnBounds(false);
        getStyleClass().add("touch-layer");
        keys = new TouchKeys(this, work);
        addEventHandler(KeyEvent.KEY_PRESSED, keys::pressed);
    }

    /**
     * Makes the nodes of a bench. Those of what was there before stay; the focus stays on the part
     * or terminal that had it.
     */
    void rebuild(Scenery scenery) {
        Optional<String> focused = focused().map(TouchNode::getId);
        Map<String, TouchNode> before = new HashMap<>();
        nodes().forEach(node -> before.put(node.getId(), node));
        List<TouchNode> parts = new ArrayList<>();
        List<TouchNode> terminals = new ArrayList<>();
        for (Part part : bench.scenario().parts()) {
            scenery.partBox(part.id()).ifPresent(box -> parts.add(partNode(part, box, before)));
            for (TerminalRef terminal : part.terminals()) {
                scenery.terminalBox(terminal).ifPresent(box -> terminals.add(terminalNode(terminal, box, before)));
            }
        }
        List<TouchNode> notes = scenery.layout().notes().stream()
                .map(note -> noteNode(note, before))
                .toList();
        stops.clear();
        stops.addAll(parts);
        stops.addAll(notes);
        List<TouchNode> all =
                Stream.of(parts, terminals, notes).flatMap(List::stream).toList();
        if (!getChildren().equals(all)) {
            getChildren().setAll(all);
            // What is gone leaves the focus to the bench, not to whatever comes first in the
            // window.
            focused.ifPresent(id -> node(id).ifPresentOrElse(TouchNode::requestFocus, work.ground()::takeFocus));
        }
    }

    /** The node that was there before, moved, or a new one. */
    private TouchNode node(Map<String, TouchNode> before, TouchNode.Kind kind, Box box) {
        TouchNode known = before.get(kind.id());
        if (known != null && known.isFor(kind)) {
            known.move(box);
            return known;
        }
        TouchNode made = new TouchNode(kind, box);
        listen(made);
        return made;
    }

    /** Tells what can be measured now. */
    void retell() {
        nodes().forEach(TouchNode::retell);
    }

    void place(BenchView view) {
        nodes().forEach(node -> node.place(view));
    }

    /** Leads the focus from the felt to the first stop. */
    void enter() {
        keys.enter();
    }

    /** Where Tab stops: parts, then notes. */
    List<TouchNode> stops() {
        return List.copyOf(stops);
    }

    List<TouchNode> nodes() {
        return getChildren().stream().map(TouchNode.class::cast).toList();
    }

    Optional<TouchNode> focused() {
        return nodes().stream().filter(TouchNode::isFocused).findFirst();
    }

    /** The part in focus, or that of the terminal in focus. */
    Optional<String> focusedPart() {
        return focused().flatMap(node -> node.what().part());
    }

    /** The terminal in focus, or the first one of the part in focus. */
    Optional<TerminalRef> focusedTerminal() {
        return focused()
                .flatMap(node -> node.terminal()
                        .or(() -> node.what()
                                .part()
                                .flatMap(bench.scenario()::part)
                                .map(Part::terminals)
                                .map(ends -> ends.get(0))));
    }

    void focusPart(String id) {
        node("part-" + id).ifPresent(TouchNode::requestFocus);
    }

    void focusTerminal(TerminalRef terminal) {
        nodes().stream()
                .filter(node -> node.terminal().filter(terminal::equals).isPresent())
                .findFirst()
                .ifPresent(TouchNode::requestFocus);
        reachFor(terminal);
    }

    /** Begins a joint at a terminal, as the mouse would. */
    void pullFrom(TerminalRef terminal) {
        work.ground().lying().terminal(terminal).ifPresent(at -> work.hands().pull(terminal, at.x(), at.y()));
    }

    /** Brings what is in the hand to a terminal, as the mouse would. */
    void reachFor(TerminalRef terminal) {
        work.ground()
                .lying()
                .terminal(terminal)
                .ifPresent(at -> work.hands().pointAt(Optional.of(terminal), at.x(), at.y()));
    }

    private Optional<TouchNode> node(String id) {
        return nodes().stream().filter(node -> node.getId().equals(id)).findFirst();
    }

    private TouchNode partNode(Part part, Box box, Map<String, TouchNode> before) {
        TouchNode.Kind kind = new TouchNode.Kind(
                "part-" + part.id(),
                new Touched.Whole(part.id()),
                texts.kind(part.kind()),
                () -> bench.scenario().part(part.id()).map(this::tell).orElse(""));
        TouchNode node = node(before, kind, box);
        if (part.kind() == PartKind.SWITCH) {
            node.setOnMousePressed(this::thumbDown);
            node.setOnMouseReleased(event -> bench.button().release(FireButtonState.Hold.MOUSE));
        }
        return node;
    }

    private TouchNode terminalNode(TerminalRef terminal, Box box, Map<String, TouchNode> before) {
        String word = TERMINAL_WORDS.getOrDefault(terminal.terminal(), terminal.terminal());
        TouchNode.Kind kind = new TouchNode.Kind(
                "terminal-" + terminal.part() + "-" + word,
                new Touched.End(terminal),
                wording.say("touch.terminal.kind"),
                () -> texts.terminal(bench.assessment(), terminal));
        return node(before, kind, box);
    }

    private TouchNode noteNode(NoteBox note, Map<String, TouchNode> before) {
        TouchNode.Kind kind = new TouchNode.Kind(
                "note-" + note.index(),
                new Touched.Slip(note.index()),
                wording.say("touch.note.kind"),
                () -> texts.note(bench.assessment(), note.index()).orElse(""));
        return node(before, kind, note.box().box());
    }

    private String tell(Part part) {
        return texts.part(bench.assessment(), part);
    }

    private void listen(TouchNode node) {
        Selection target = node.what().lit();
        node.setOnMouseEntered(event -> bench.spotlight().point(target));
        node.setOnMouseExited(event -> bench.spotlight().point(Selection.NOTHING));
        node.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> focus(node, event));
        node.focusedProperty().subscribe(on -> bench.spotlight().point(on ? target : Selection.NOTHING));
    }

    private static void focus(TouchNode node, MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            node.requestFocus();
        }
    }

    private void thumbDown(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            bench.button().press(FireButtonState.Hold.MOUSE);
        }
    }
}
