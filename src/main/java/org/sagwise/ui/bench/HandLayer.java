package org.sagwise.ui.bench;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.Fragment;
import org.sagwise.ui.workbench.Workbench;

/** Shows what is in the hand, over the bench: a part, the free end of a joint, a probe, a frame. */
final class HandLayer extends Pane {

    /** Radius of the mark around a terminal that would be joined, in pixels. */
    private static final double MARK = 13;

    private final Workbench work;
    private final ViewModel view;
    private final Ghost ghost;
    private final ImageView picture = new ImageView();
    private final Rectangle frame = styled(new Rectangle(), "hand-frame");
    private final CubicCurve lead = styled(new CubicCurve(), "hand-draft");
    private final Circle end = styled(new Circle(5), "hand-end");
    private final PlateMarks plate = new PlateMarks();
    private final HeldProbe probe = new HeldProbe();
    private final Circle mark = styled(new Circle(MARK), "hand-mark");

    HandLayer(Workbench work, ViewModel view, Ghost ghost) {
        this.work = work;
        this.view = view;
        this.ghost = ghost;
        setMouseTransparent(true);
        picture.getStyleClass().add("hand-part");
        getChildren().addAll(picture, frame, lead, end, mark, plate, probe);
        update();
    }

    private static <T extends Shape> T styled(T shape, String style) {
        shape.getStyleClass().add(style);
        shape.setManaged(false);
        return shape;
    }

    /** Shows what is in the hand now. */
    void update() {
        Tool tool = work.hands().tool();
        getChildren().forEach(each -> each.setVisible(false));
        if (tool instanceof Tool.Fresh fresh) {
            Scenario alone = Scenario.of("", List.of(fresh.part()), List.of())
                    .withPlacement(Map.of(fresh.part().id(), new Placement(0, 0, fresh.quarters() * 90.0)));
            showPart(alone, fresh.x(), fresh.y());
        } else if (tool instanceof Tool.Lifted lifted) {
            Scenario whole =
                    work.bench().scenario().withPlacement(work.ground().lying().placements());
            showPart(Fragment.of(whole, lifted.ids()), lifted.dx(), lifted.dy());
        } else if (tool instanceof Tool.Slip slip) {
            work.ground().seen().note(slip.note()).ifPresent(note -> showSlip(note.box(), slip.dx(), slip.dy()));
        } else if (tool instanceof Tool.Frame drawn) {
            showFrame(view.get().toWindow(BenchInteraction.areaOf(drawn)));
        } else if (tool instanceof Tool.DraftLink held) {
            Point2D from = pointOf(held.from()).orElse(new Point2D.Double(held.x(), held.y()));
            showLead(from, tip(held.over(), held.x(), held.y()), held.over());
        } else if (tool instanceof Tool.Gathered held) {
            plate.show(
                    held.terminals().stream().flatMap(end -> seen(end).stream()).toList());
            held.over().flatMap(this::seen).ifPresent(at -> showMark(at, true));
        } else if (tool instanceof Tool.Tip held) {
            showProbe(held);
        }
    }

    private void showPart(Scenario part, int dx, int dy) {
        BenchView now = view.get();
        Ghost.Shown shown = ghost.of(part, now.scale());
        Rectangle2D area = shown.area();
        Rectangle2D there = now.toWindow(
                new Rectangle2D.Double(area.getX() + dx, area.getY() + dy, area.getWidth(), area.getHeight()));
        picture.setImage(shown.image());
        picture.setX(there.getX());
        picture.setY(there.getY());
        picture.setFitWidth(there.getWidth());
        picture.setFitHeight(there.getHeight());
        picture.setVisible(true);
        showFrame(there);
    }

    private void showSlip(Rectangle2D box, double dx, double dy) {
        showFrame(view.get()
                .toWindow(new Rectangle2D.Double(box.getX() + dx, box.getY() + dy, box.getWidth(), box.getHeight())));
    }

    private void showFrame(Rectangle2D area) {
        frame.setX(area.getX());
        frame.setY(area.getY());
        frame.setWidth(area.getWidth());
        frame.setHeight(area.getHeight());
        frame.setVisible(true);
    }

    private void showLead(Point2D from, Point2D to, Optional<TerminalRef> over) {
        Point2D one = view.get().toWindow(from.getX(), from.getY());
        Point2D other = view.get().toWindow(to.getX(), to.getY());
        double bow = Math.min(60, one.distance(other) / 3);
        lead.setStartX(one.getX());
        lead.setStartY(one.getY());
        lead.setControlX1(one.getX());
        lead.setControlY1(one.getY() - bow);
        lead.setControlX2(other.getX());
        lead.setControlY2(other.getY() - bow);
        lead.setEndX(other.getX());
        lead.setEndY(other.getY());
        lead.setVisible(true);
        showEnd(to, over);
    }

    private void showProbe(Tool.Tip held) {
        Point2D at = tip(held.over(), held.x(), held.y());
        Optional<Point2D> meter = work.ground()
                .lying()
                .probes()
                .map(box -> new Point2D.Double(box.card().getCenterX(), box.card().y))
                .map(from -> view.get().toWindow(from.getX(), from.getY()));
        probe.show(view.get().toWindow(at.getX(), at.getY()), held.probe(), meter);
        showMark(view.get().toWindow(at.getX(), at.getY()), held.over().isPresent());
    }

    private void showEnd(Point2D to, Optional<TerminalRef> over) {
        Point2D seen = view.get().toWindow(to.getX(), to.getY());
        end.setCenterX(seen.getX());
        end.setCenterY(seen.getY());
        end.setVisible(true);
        showMark(seen, over.isPresent());
    }

    private void showMark(Point2D seen, boolean over) {
        mark.setCenterX(seen.getX());
        mark.setCenterY(seen.getY());
        mark.setVisible(over);
    }

    private Optional<Point2D> seen(TerminalRef terminal) {
        return pointOf(terminal).map(at -> view.get().toWindow(at.getX(), at.getY()));
    }

    private Point2D tip(Optional<TerminalRef> over, double x, double y) {
        return over.flatMap(this::pointOf).orElse(new Point2D.Double(x, y));
    }

    private Optional<Point2D> pointOf(TerminalRef terminal) {
        BenchLayout layout = work.ground().lying();
        return layout.terminal(terminal).map(point -> new Point2D.Double(point.x(), point.y()));
    }
}
