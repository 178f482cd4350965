package org.sagwise.ui.bench;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.EmphasisPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.settings.AppliedLooks;

/** A bench set out for the screen: where everything lies, and how it is painted. */
final class Scenery {

    /** Distance within which the mouse finds a link, in pixels. */
    private static final double REACH = 10;

    /** Side of the square around a terminal that can be touched, in bench units. */
    private static final double TERMINAL = 20;

    /** The colour scale stands under the bench, where it covers nothing. */
    private static final Set<Detail> ON_SCREEN = Set.of(Detail.FIGURES, Detail.FLAGS, Detail.NOTES, Detail.PROBES);

    private final BenchScene scene;
    private final AppliedLooks looks;
    private final ChevronPainter chevrons;

    private Scenery(BenchScene scene, AppliedLooks looks, ChevronPainter chevrons) {
        this.scene = scene;
        this.looks = looks;
        this.chevrons = chevrons;
    }

    static Scenery of(Assessment assessment, BenchLayout layout, AppliedLooks looks, Locale locale) {
        BenchScene scene = BenchScene.of(assessment, layout, looks.theme(), locale)
                .with(ON_SCREEN)
                .withLines(looks.lineScale());
        return new Scenery(scene, looks, new ChevronPainter(scene));
    }

    /** The same bench with other readings; its chevrons go on from where they are. */
    Scenery with(Assessment assessment) {
        BenchScene other = BenchScene.of(assessment, scene.layout(), looks.theme(), scene.locale())
                .with(ON_SCREEN)
                .withLines(looks.lineScale());
        return new Scenery(other, looks, chevrons);
    }

    /** Whether this is how a scenario lies in these looks; then only readings can differ. */
    boolean lies(Scenario scenario, AppliedLooks others) {
        return scene.scenario().equals(scenario) && looks.equals(others);
    }

    BenchLayout layout() {
        return scene.layout();
    }

    Box bounds() {
        return scene.layout().bounds();
    }

    /** Where the view shows what is meant. */
    Box seen(BenchView view, Selection meant) {
        Stream<Box> parts = meant.parts().stream()
                .flatMap(id -> scene.layout().part(id).stream())
                .map(box -> box.body().box());
        Stream<Box> notes = meant.notes().stream()
                .flatMap(at -> scene.layout().note(at).stream())
                .map(note -> note.box().box());
        Stream<Box> links = meant.links().stream()
                .flatMap(at -> scene.layout().route(at).stream())
                .map(route -> new Box(route.middle().x(), route.middle().y(), 1, 1));
        return view.toWindow(Stream.of(parts, notes, links)
                .flatMap(each -> each)
                .reduce(Box::union)
                .orElseGet(this::bounds));
    }

    /** Where parts lie, with their figures, that did not lie on the bench before. */
    List<Box> newSince(Optional<Scenery> before) {
        return scene.layout().parts().stream()
                .filter(box -> before.flatMap(then -> then.partBox(box.id())).isEmpty())
                .map(box -> box.body().union(box.label()).box())
                .toList();
    }

    /** How many parts lie elsewhere than before. */
    long movedSince(Optional<Scenery> before) {
        return scene.layout().parts().stream()
                .filter(box -> before.flatMap(then -> then.partBox(box.id()))
                        .filter(then -> !then.equals(box.body().box()))
                        .isPresent())
                .count();
    }

    Optional<Box> partBox(String id) {
        return scene.layout().part(id).map(box -> box.body().box());
    }

    Optional<Box> terminalBox(TerminalRef terminal) {
        return scene.layout()
                .terminal(terminal)
                .map(point -> new Box(point.x() - TERMINAL / 2, point.y() - TERMINAL / 2, TERMINAL, TERMINAL));
    }

    /** The link near a point of the view. */
    OptionalInt linkAt(BenchView view, double x, double y) {
        Point point = view.toBench(x, y);
        return scene.layout().linkAt(point.x(), point.y(), REACH / view.scale());
    }

    /** Whether anything on it moves. */
    boolean isMoving() {
        return chevrons.isMoving(scene.readings());
    }

    /** Lets what moves go on for a while. */
    void advance(double seconds) {
        chevrons.advance(scene.readings(), seconds);
    }

    /** Whether everything lies where it lies in another. */
    boolean isLaidOutAs(Scenery other) {
        return scene.layout() == other.scene.layout() && looks.equals(other.looks);
    }

    /**
     * Paints all that stands still; nothing stands out. May be called on any thread.
     *
     * @param more what is shown besides the usual
     */
    void paintStill(Pen graphics, BenchView view, Set<Detail> more) {
        Set<Detail> details = EnumSet.copyOf(ON_SCREEN);
        details.addAll(more);
        StillPainter.paint(graphics, scene.with(details), view);
    }

    /**
     * Paints what stands out, over all that stands still.
     *
     * @param lit what is pointed at
     * @param chosen what is chosen
     */
    void paintStandingOut(Pen graphics, BenchView view, Selection lit, Selection chosen) {
        Set<Integer> links = new HashSet<>(lit.links());
        links.addAll(chosen.links());
        Set<Integer> notes = new HashSet<>(lit.notes());
        notes.addAll(chosen.notes());
        Emphasis emphasis = new Emphasis(chosen.parts(), lit.parts(), links, notes);
        EmphasisPainter.paint(graphics, scene.with(emphasis), view);
    }

    void paintMoving(Pen graphics, BenchView view) {
        chevrons.paint(graphics, scene, view);
    }
}
