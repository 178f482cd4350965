package org.sagwise.ui.bench;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.geometry.Point;

/** A probe of the meter in the hand: its tip is where the pointer is. */
final class HeldProbe extends Group {

    private static final PseudoClass RED = PseudoClass.getPseudoClass("red");

    /** How far the bare tip and the whole probe reach aside and up, in pixels. */
    private static final double NEEDLE = 10;

    private static final double LENGTH = 34;

    /** How far a lead hangs, in pixels. */
    private static final double SLACK = 50;

    private final CubicCurve lead = styled(new CubicCurve(), "held-wire");
    private final Line needle = styled(new Line(), "held-needle");
    private final Line edge = styled(new Line(), "held-edge");
    private final Line handle = styled(new Line(), "held-handle");

    HeldProbe() {
        setManaged(false);
        getChildren().addAll(lead, edge, needle, handle);
    }

    private static <T extends Shape> T styled(T shape, String style) {
        shape.getStyleClass().add(style);
        return shape;
    }

    /**
     * Shows it.
     *
     * @param tip where its tip is
     * @param meter where its lead begins; nowhere while the meter lies beside the bench
     */
    void show(Point tip, Tool.Probe probe, Optional<Point> meter) {
        boolean red = probe == Tool.Probe.RED;
        for (Shape shape : List.of(lead, handle)) {
            shape.pseudoClassStateChanged(RED, red);
        }
        line(needle, tip, 0, NEEDLE);
        line(edge, tip, NEEDLE, LENGTH);
        line(handle, tip, NEEDLE, LENGTH);
        lead.setVisible(meter.isPresent());
        meter.ifPresent(from -> lead(from, tip));
        setVisible(true);
    }

    private static void line(Line line, Point tip, double from, double to) {
        line.setStartX(tip.x() + from);
        line.setStartY(tip.y() - from);
        line.setEndX(tip.x() + to);
        line.setEndY(tip.y() - to);
    }

    private void lead(Point from, Point tip) {
        lead.setStartX(from.x());
        lead.setStartY(from.y());
        lead.setControlX1(from.x());
        lead.setControlY1(from.y() - SLACK);
        lead.setControlX2(tip.x() + LENGTH + SLACK);
        lead.setControlY2(tip.y() - LENGTH - SLACK);
        lead.setEndX(tip.x() + LENGTH);
        lead.setEndY(tip.y() - LENGTH);
    }
}
