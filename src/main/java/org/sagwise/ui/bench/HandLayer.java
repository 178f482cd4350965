package org.sagwise.ui.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.Guides;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Link;
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
    private final Path wires = styled(new Path(), "hand-wires");
    private final CubicCurve lead = styled(new CubicCurve(), "hand-draft");
    private final Circle end = styled(new Circle(5), "hand-end");
    private final PlateMarks plate = new PlateMarks();
    private final HeldProbe probe = new HeldProbe();
    private final Path alignment = styled(new Path(), "hand-alignment");
    private final Group touches = new Group();
    private final Circle mark = styled(new Circle(MARK), "hand-mark");

    HandLayer(Workbench work, ViewModel view, Ghost ghost) {
        this.work = work;
        this.view = view;
        this.ghost = ghost;
        setMouseTransparent(true);
        picture.getStyleClass().add("hand-part");
        touches.setManaged(false);
        getChildren().addAll(alignment, wires, picture, frame, lead, end, mark, touches, plate, probe);
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
            showGuides(work.hands().guides());
        } else if (tool instanceof Tool.Lifted lifted) {
            Scenario whole =
                    work.bench().scenario().withPlacement(work.ground().lying().placements());
            showPart(Fragment.of(whole, lifted.ids()), lifted.dx(), lifted.dy());
            showWires(lifted);
            showGuides(work.hands().guides());
        } else if (tool instanceof Tool.Slip slip) {
            work.ground()
                    .seen()
                    .note(slip.note())
                    .ifPresent(note -> showSlip(note.box().box(), slip.dx(), slip.dy()));
        } else if (tool instanceof Tool.Frame drawn) {
            showFrame(view.get().toWindow(BenchInteraction.areaOf(drawn)));
        } else if (tool instanceof Tool.DraftLink held) {
            Point from = pointOf(held.from()).orElse(new Point(held.x(), held.y()));
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
        Box area = shown.area();
        Box there = now.toWindow(area.moved(dx, dy));
        picture.setImage(shown.image());
        picture.setX(there.x());
        picture.setY(there.y());
        picture.setFitWidth(there.width());
        picture.setFitHeight(there.height());
        picture.setVisible(true);
        showFrame(there);
    }

    /** The joints of what is lifted follow it, as leads that hang from where they are held. */
    private void showWires(Tool.Lifted lifted) {
        wires.getElements().clear();
        for (Link link : work.bench().scenario().links()) {
            boolean from = lifted.ids().contains(link.from().part());
            boolean to = lifted.ids().contains(link.to().part());
            if (from != to) {
                TerminalRef held = from ? link.from() : link.to();
                TerminalRef other = from ? link.to() : link.from();
                pointOf(held)
                        .map(at -> new Point(at.x() + lifted.dx(), at.y() + lifted.dy()))
                        .ifPresent(one -> pointOf(other).ifPresent(two -> addWire(one, two)));
            }
        }
        wires.setVisible(true);
    }

    private void addWire(Point from, Point to) {
        Point one = view.get().toWindow(from.x(), from.y());
        Point other = view.get().toWindow(to.x(), to.y());
        double sag = Math.min(40, one.distance(other) / 4);
        wires.getElements()
                .addAll(
                        new MoveTo(one.x(), one.y()),
                        new CubicCurveTo(one.x(), one.y() + sag, other.x(), other.y() + sag, other.x(), other.y()));
    }

    /** What it would be in line with, and which terminals would touch. */
    private void showGuides(Guides guides) {
        alignment.getElements().clear();
        for (Line line : guides.lines()) {
            Point from = view.get().toWindow(line.x1(), line.y1());
            Point to = view.get().toWindow(line.x2(), line.y2());
            alignment.getElements().addAll(new MoveTo(from.x(), from.y()), new LineTo(to.x(), to.y()));
        }
        alignment.setVisible(true);
        touches.getChildren()
                .setAll(guides.touches().stream()
                        .map(at -> view.get().toWindow(at.x(), at.y()))
                        .map(seen -> styled(new Circle(seen.x(), seen.y(), MARK), "hand-mark"))
                        .toList());
        touches.setVisible(true);
    }

    private void showSlip(Box box, double dx, double dy) {
        showFrame(view.get().toWindow(box.moved(dx, dy)));
    }

    private void showFrame(Box area) {
        frame.setX(area.x());
        frame.setY(area.y());
        frame.setWidth(area.width());
        frame.setHeight(area.height());
        frame.setVisible(true);
    }

    private void showLead(Point from, Point to, Optional<TerminalRef> over) {
        Point one = view.get().toWindow(from.x(), from.y());
        Point other = view.get().toWindow(to.x(), to.y());
        double bow = Math.min(60, one.distance(other) / 3);
        lead.setStartX(one.x());
        lead.setStartY(one.y());
        lead.setControlX1(one.x());
        lead.setControlY1(one.y() - bow);
        lead.setControlX2(other.x());
        lead.setControlY2(other.y() - bow);
        lead.setEndX(other.x());
        lead.setEndY(other.y());
        lead.setVisible(true);
        showEnd(to, over);
    }

    private void showProbe(Tool.Tip held) {
        Point at = tip(held.over(), held.x(), held.y());
        Optional<Point> meter = work.ground()
                .lying()
                .probes()
                .map(box -> new Point(box.card().middleX(), box.card().y()))
                .map(from -> view.get().toWindow(from.x(), from.y()));
        probe.show(view.get().toWindow(at.x(), at.y()), held.probe(), meter);
        showMark(view.get().toWindow(at.x(), at.y()), held.over().isPresent());
    }

    private void showEnd(Point to, Optional<TerminalRef> over) {
        Point seen = view.get().toWindow(to.x(), to.y());
        end.setCenterX(seen.x());
        end.setCenterY(seen.y());
        end.setVisible(true);
        showMark(seen, over.isPresent());
    }

    private void showMark(Point seen, boolean over) {
        mark.setCenterX(seen.x());
        mark.setCenterY(seen.y());
        mark.setVisible(over);
    }

    private Optional<Point> seen(TerminalRef terminal) {
        return pointOf(terminal).map(at -> view.get().toWindow(at.x(), at.y()));
    }

    private Point tip(Optional<TerminalRef> over, double x, double y) {
        return over.flatMap(this::pointOf).orElse(new Point(x, y));
    }

    private Optional<Point> pointOf(TerminalRef terminal) {
        BenchLayout layout = work.ground().lying();
        return layout.terminal(terminal).map(point -> new Point(point.x(), point.y()));
    }
}
