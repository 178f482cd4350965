package org.sagwise.ui.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.sagwise.interaction.Selection;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.Painting;
import org.sagwise.ui.kit.PictureLayer;

/**
 * What is painted of the bench, in layers, so that little is painted anew when something changes: a
 * picture of all that stands still, what moves over it, and over both what stands out.
 *
 * <p>The picture takes its time, behind the scenes. Until it is ready, what moves is painted where
 * the last one has it.
 */
final class BenchLayers {

    /** What one picture shows. */
    private record Shot(Scenery scenery, BenchView view, Set<Detail> more) implements Painting {

        @Override
        public void paint(Pen graphics, double width, double height) {
            scenery.paintStill(graphics, view, more);
        }
    }

    private final Supplier<Scenery> scenery;
    private final ViewModel view;
    private final PictureLayer<Shot> still;
    private final CanvasLayer moving = new CanvasLayer(this::paintMoving);
    private final CanvasLayer standingOut = new CanvasLayer(this::paintStandingOut);
    private Optional<Shot> shown = Optional.empty();
    private Set<Detail> more = Set.of();
    private Selection lit = Selection.NOTHING;
    private Selection chosen = Selection.NOTHING;

    /**
     * @param scenery the bench as it is set out now
     * @param painter where the picture is painted
     */
    BenchLayers(Supplier<Scenery> scenery, ViewModel view, Executor painter) {
        this.scenery = scenery;
        this.view = view;
        still = new PictureLayer<>(this::shot, painter, this::show);
        standingOut.setVisible(false);
    }

    List<Node> nodes() {
        return List.of(still, moving, standingOut);
    }

    void resize(double width, double height) {
        still.resizeRelocate(0, 0, width, height);
        moving.resizeRelocate(0, 0, width, height);
        standingOut.resizeRelocate(0, 0, width, height);
    }

    /** Paints everything anew. */
    void repaint() {
        still.repaint();
        moving.repaint();
        standingOut.repaint();
    }

    /** Paints what moves, before the next frame. */
    void repaintMoving() {
        moving.repaint();
    }

    /** Paints what moves now; for an animation that is already called once a frame. */
    void paintFrame() {
        moving.paintNow();
    }

    /** Shows this besides the usual, and no longer what was shown besides it. */
    void setMore(Set<Detail> details) {
        if (!details.equals(more)) {
            more = details;
            still.repaint();
        }
    }

    /**
     * Lets other things stand out.
     *
     * @param pointed what is pointed at
     * @param picked what is chosen
     */
    void standOut(Selection pointed, Selection picked) {
        lit = pointed;
        chosen = picked;
        standingOut.setVisible(!lit.equals(Selection.NOTHING) || !chosen.equals(Selection.NOTHING));
        standingOut.repaint();
    }

    private Shot shot() {
        return new Shot(scenery.get(), view.get(), more);
    }

    private void show(Shot shot) {
        shown = Optional.of(shot);
        moving.repaint();
        standingOut.repaint();
    }

    private void paintMoving(Pen graphics, double width, double height) {
        Scenery now = scenery.get();
        if (now.isMoving()) {
            shown.filter(seen -> seen.scenery().isLaidOutAs(now))
                    .ifPresent(seen -> now.paintMoving(graphics, seen.view()));
        }
    }

    private void paintStandingOut(Pen graphics, double width, double height) {
        Scenery now = scenery.get();
        shown.filter(seen -> seen.scenery().isLaidOutAs(now))
                .ifPresent(seen -> now.paintStandingOut(graphics, seen.view(), lit, chosen));
    }
}
