package org.sagwise.ui.bench;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
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
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.picture.layout.PartBox;
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

    Rectangle2D bounds() {
        return scene.layout().bounds();
    }

    /** Where the view shows what is meant. */
    Rectangle2D seen(BenchView view, Selection meant) {
        Stream<Rectangle2D> parts = meant.parts().stream()
                .flatMap(id -> scene.layout().part(id).stream())
                .map(PartBox::body);
        Stream<Rectangle2D> notes = meant.notes().stream()
                .flatMap(at -> scene.layout().note(at).stream())
                .map(NoteBox::box);
        Stream<Rectangle2D> links = meant.links().stream()
                .flatMap(at -> scene.layout().route(at).stream())
                .map(route -> new Rectangle2D.Double(route.middle().x, route.middle().y, 1, 1));
        return view.toWindow(Stream.of(parts, notes, links)
                .flatMap(each -> each)
                .reduce(Rectangle2D::createUnion)
                .orElseGet(this::bounds));
    }

    /** Where parts lie, with their figures, that did not lie on the bench before. */
    List<Rectangle2D> newSince(Optional<Scenery> before) {
        return scene.layout().parts().stream()
                .filter(box -> before.flatMap(then -> then.partBox(box.id())).isEmpty())
                .map(box -> (Rectangle2D) box.body().union(box.label()))
                .toList();
    }

    Optional<Rectangle2D> partBox(String id) {
        return scene.layout().part(id).map(box -> box.body());
    }

    Optional<Rectangle2D> terminalBox(TerminalRef terminal) {
        return scene.layout()
                .terminal(terminal)
                .map(point ->
                        new Rectangle2D.Double(point.x() - TERMINAL / 2, point.y() - TERMINAL / 2, TERMINAL, TERMINAL));
    }

    /** The link near a point of the view. */
    OptionalInt linkAt(BenchView view, double x, double y) {
        Point2D point = view.toBench(x, y);
        return scene.layout().linkAt(point.getX(), point.getY(), REACH / view.scale());
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
    void paintStill(Graphics2D graphics, BenchView view, Set<Detail> more) {
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
    void paintStandingOut(Graphics2D graphics, BenchView view, Selection lit, Selection chosen) {
        Set<Integer> links = new HashSet<>(lit.links());
        links.addAll(chosen.links());
        Set<Integer> notes = new HashSet<>(lit.notes());
        notes.addAll(chosen.notes());
        Emphasis emphasis = new Emphasis(chosen.parts(), lit.parts(), links, notes, Optional.empty());
        EmphasisPainter.paint(graphics, scene.with(emphasis), view);
    }

    void paintMoving(Graphics2D graphics, BenchView view) {
        chevrons.paint(graphics, scene, view);
    }
}
