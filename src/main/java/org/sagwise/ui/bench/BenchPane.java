package org.sagwise.ui.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.stage.Window;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.scene.Detail;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Beat;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.settings.Motion;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** The bench: what is painted of it, the nodes to touch over that, and what is in the hand. */
public final class BenchPane extends Pane implements Workbench.Ground {

    /** Before the window has a size, the bench is set out for this one, in pixels. */
    private static final double LEAST_SIDE = 300;

    /** Width and height that a bench may count on before it has been given any: most never see less. */
    private static final double USUAL_SIDE = 600;

    /** What is seen is not what lies there now. */
    private static final double PALE = 0.4;

    /** Between what a note is on and the slip on which it is written, in pixels. */
    private static final double EDITOR_GAP = 12;

    private final Workbench work;
    private final BenchModel bench;
    private final LooksModel looks;
    private final ViewModel view;
    private final Framing framing;
    private final Wording wording;
    private final Locale locale;
    private final TouchLayer touch;
    private final MeterLayer meter;
    private final HandLayer hand;
    private final NoteEditor noteEditor;
    private final ChosenTools tools;
    private final Layouts layouts;
    private final BenchLayers layers;
    private final LargeBenchOpening anew;
    private final Label working = new Label();
    private final Beat drift = Beat.eachFrame(this::frame);
    private Scenery scenery;

    /**
     * @param assess computes everything about parts that are held
     * @param editor shows the card of what is chosen
     * @param layouts where everything lies
     * @param painter where the picture of all that stands still is painted
     * @param behindTheScenes where large benches that were changed are set out
     */
    public BenchPane(
            Workbench work,
            Commands commands,
            Function<Scenario, Assessment> assess,
            Runnable editor,
            LooksModel looks,
            ViewModel view,
            Layouts layouts,
            Executor painter,
            Executor behindTheScenes,
            Wording wording,
            Subscriptions subscriptions) {
        this.work = work;
        this.bench = work.bench();
        this.looks = looks;
        this.view = view;
        this.framing = new Framing(view);
        this.wording = wording;
        this.locale = wording.locale();
        work.lieOn(this);
        this.touch = new TouchLayer(work, wording);
        this.meter = new MeterLayer(work, commands, wording);
        this.hand =
                new HandLayer(work, view, new Ghost(assess, () -> looks.get().theme()));
        this.noteEditor = new NoteEditor(work, wording);
        this.layouts = layouts;
        this.layers = new BenchLayers(() -> scenery, view, painter);
        setId("bench");
        getStyleClass().add("bench");
        setAccessibleRole(AccessibleRole.PARENT);
        getChildren().addAll(layers.nodes());
        Controls controls = new Controls(wording, subscriptions);
        this.tools = new ChosenTools(work, commands, controls);
        this.anew = new LargeBenchOpening(layouts, looks, new Threads(behindTheScenes, Platform::runLater));
        working.setId("bench-working");
        working.getStyleClass().add("bench-working");
        working.setMouseTransparent(true);
        getChildren().addAll(touch, meter, hand, tools, noteEditor, working);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        ZoomPan.on(this, view);
        LinkPointer.on(this, bench, this::linkAt);
        BenchMouse mouse = BenchMouse.on(this, work, view, this::linkAt, editor, this::writeNote);
        BenchKeys keys = BenchKeys.on(this, touch, work, commands, editor, this::refuses, noteEditor);
        BenchContextMenu.on(this, touch, work, mouse, keys, commands, controls);
        listen(subscriptions);
    }

    private void listen(Subscriptions subscriptions) {
        subscriptions.watch(anew.underWayProperty(), this::mark);
        subscriptions.watch(bench.assessmentProperty(), now -> restage());
        subscriptions.onChange(looks.property(), this::restage);
        subscriptions.onChange(bench.spotlight().litProperty(), this::standOut);
        subscriptions.onChange(work.movesProperty(), this::follow);
        subscriptions.onChange(view.property(), this::reposition);
        subscriptions.onChange(noteEditor.visibleProperty(), this::placeTools);
        ObservableValue<Window> window = sceneProperty().flatMap(s -> s.windowProperty());
        subscriptions.onChange(window.flatMap(Window::showingProperty), this::move);
        subscriptions.add(() -> drift.run(false));
    }

    /** Sets everything out anew: other readings, another document, other looks. */
    private void restage() {
        if (scenery != null && scenery.lies(bench.assessment().scenario(), looks.get())) {
            anew.callOff();
            scenery = scenery.with(bench.assessment());
            touch.retell();
            meter.retell();
            hand.update();
            layers.repaint();
        } else {
            setOutInTime();
        }
        move();
    }

    /** What takes long is set out beside the thread of the window; what lay there before is seen until then. */
    private void setOutInTime() {
        Scenario now = bench.assessment().scenario();
        if (scenery == null
                || LargeBenchOpening.isQuick(now)
                || layouts.has(asked(looks.get().drawing()))) {
            anew.callOff();
            setOut();
        } else if (!anew.underWayProperty().get().equals(Optional.of(now))) {
            anew.whenReady(now, this::restage);
        }
    }

    private boolean isOld() {
        return anew.underWayProperty().get().isPresent();
    }

    /** What is seen, with its own readings, is not what lies there now: it is pale, and cannot be touched. */
    private void mark(Optional<Scenario> underWay) {
        boolean old = underWay.isPresent();
        working.setText(
                underWay.map(it -> wording.say("bench.working", it.parts().size()))
                        .orElse(""));
        working.setVisible(old);
        touch.setMouseTransparent(old);
        layers.nodes().forEach(node -> node.setOpacity(old ? PALE : 1));
        if (scenery != null) {
            standOut();
            placeTools();
            move();
        }
    }

    private void setOut() {
        BenchLayout layout = layout(looks.get().drawing());
        if (scenery == null
                || !scenery.lies(bench.assessment().scenario(), looks.get())
                || !layout.equals(scenery.layout())) {
            Optional<Scenery> before = Optional.ofNullable(scenery);
            scenery = Scenery.of(bench.assessment(), layout, looks.get(), locale);
            touch.rebuild(scenery);
            meter.rebuild(layout.probes());
            if (Framing.isRedrawn(before, scenery)) {
                work.say("");
            }
            framing.show(before, scenery, bench.history());
        }
        framing.keepMeter(layout);
        reposition();
    }

    private BenchLayout layout(Drawing drawing) {
        return layouts.of(asked(drawing), side(getWidth()), side(getHeight()));
    }

    private static double side(double given) {
        return given > 0 ? Math.max(LEAST_SIDE, given) : USUAL_SIDE;
    }

    private Layouts.Asked asked(Drawing drawing) {
        return Layouts.Asked.of(bench.assessment().scenario(), looks.get(), drawing);
    }

    /** What is in the hand or chosen is another now. */
    private void follow() {
        if (work.hands().isBusy() && refuses()) {
            work.hands().cancel();
            return;
        }
        hand.update();
        meter.lift(work.hands().tool());
        layers.setMore(besides(work.hands().tool()));
        standOut();
        placeTools();
    }

    /** A grid to lay things by; and a probe in the hand is not painted where it rested. */
    private static Set<Detail> besides(Tool tool) {
        if (tool instanceof Tool.Tip tip) {
            boolean red = tip.probe() == Tool.Probe.RED;
            return Set.of(Detail.GRID, red ? Detail.RED_IN_HAND : Detail.BLACK_IN_HAND);
        }
        return tool instanceof Tool.Nothing ? Set.of() : Set.of(Detail.GRID);
    }

    private void standOut() {
        boolean old = isOld();
        layers.standOut(
                old ? Selection.NOTHING : bench.spotlight().lit(),
                old ? Selection.NOTHING : work.hands().chosen());
    }

    /** In a schematic nothing has a place of its own: says so instead of moving anything. */
    private boolean refuses() {
        boolean still = looks.get().drawing() == Drawing.SCHEMATIC;
        if (still) {
            work.say(wording.say("schematic.still"));
        }
        return still;
    }

    @Override
    public BenchLayout lying() {
        return looks.get().drawing() == Drawing.BENCH ? scenery.layout() : layout(Drawing.BENCH);
    }

    @Override
    public BenchLayout seen() {
        return scenery.layout();
    }

    @Override
    public Point middle() {
        return view.get().toBench(getWidth() / 2, getHeight() / 2);
    }

    @Override
    public void takeFocus() {
        requestFocus();
    }

    @Override
    public void focusPart(String id) {
        touch.focusPart(id);
    }

    @Override
    public void focusTerminal(TerminalRef terminal) {
        touch.focusTerminal(terminal);
    }

    @Override
    public void writeNote() {
        Selection chosen = work.hands().chosen();
        if (chosen.isOne() && !work.hands().isBusy()) {
            noteEditor.open(chosen);
            placeEditor();
            placeTools();
        }
    }

    /** Beside what the note is on, and whole within the bench. */
    private void placeEditor() {
        if (!noteEditor.isOpen()) {
            return;
        }
        noteEditor.applyCss();
        double width = Math.min(getWidth(), noteEditor.prefWidth(-1));
        double height = Math.min(getHeight(), noteEditor.prefHeight(width));
        Box about = scenery.seen(view.get(), work.hands().chosen());
        double below = about.bottom() + EDITOR_GAP;
        double above = about.y() - EDITOR_GAP - height;
        boolean beside = above < 0 && below + height > getHeight();
        double right = about.right() + EDITOR_GAP;
        double left = about.x() - EDITOR_GAP - width;
        double x = beside ? (left < 0 ? right : left) : about.middleX() - width / 2;
        double y = beside ? about.middleY() - height / 2 : above < 0 ? below : above;
        noteEditor.resizeRelocate(
                Math.max(0, Math.min(getWidth() - width, x)),
                Math.max(0, Math.min(getHeight() - height, y)),
                width,
                height);
    }

    @Override
    public boolean handTo(double sceneX, double sceneY) {
        javafx.geometry.Point2D here = sceneToLocal(sceneX, sceneY);
        Point at = view.get().toBench(here.getX(), here.getY());
        work.hands().moveTo(at.x(), at.y(), BenchMouse.reach(work.hands(), view.get()));
        return getLayoutBounds().contains(here);
    }

    private void reposition() {
        touch.place(view.get());
        meter.place(view.get());
        hand.update();
        placeEditor();
        placeTools();
        layers.repaint();
    }

    /** A class that looks on needs no tools, and nobody needs them under a note that is written. */
    private void placeTools() {
        tools.place(
                !looks.projectorProperty().get() && !noteEditor.isOpen() && !isOld(),
                scenery.seen(view.get(), work.hands().chosen()),
                new Box(0, 0, getWidth(), getHeight()),
                scenery.layout(),
                view.get());
    }

    private void move() {
        boolean seen = getScene() != null
                && getScene().getWindow() != null
                && getScene().getWindow().isShowing();
        boolean full = looks.get().motion() != Motion.REDUCED;
        drift.run(seen && full && !isOld() && scenery.isMoving());
        layers.repaintMoving();
    }

    private void frame(double seconds) {
        scenery.advance(seconds);
        layers.paintFrame();
    }

    private OptionalInt linkAt(double x, double y) {
        return isOld() ? OptionalInt.empty() : scenery.linkAt(view.get(), x, y);
    }

    @Override
    protected void layoutChildren() {
        if (view.resize(getWidth(), getHeight())) {
            setOutInTime();
        }
        working.autosize();
        working.relocate(Math.max(0, (getWidth() - working.getWidth()) / 2), EDITOR_GAP);
        layers.resize(getWidth(), getHeight());
        touch.resizeRelocate(0, 0, getWidth(), getHeight());
        meter.resizeRelocate(0, 0, getWidth(), getHeight());
    }

    /** Where the tools of what is chosen stand; empty without any. */
    Optional<Box> tools() {
        Bounds seen = tools.getBoundsInParent();
        return tools.isVisible()
                ? Optional.of(new Box(seen.getMinX(), seen.getMinY(), seen.getWidth(), seen.getHeight()))
                : Optional.empty();
    }
}
