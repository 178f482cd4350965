package org.sagwise.ui.bench;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import org.sagwise.interaction.Tool;

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
    void show(Point2D tip, Tool.Probe probe, Optional<Point2D> meter) {
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

    private static void line(Line line, Point2D tip, double from, double to) {
        line.setStartX(tip.getX() + from);
        line.setStartY(tip.getY() - from);
        line.setEndX(tip.getX() + to);
        line.setEndY(tip.getY() - to);
    }

    private void lead(Point2D from, Point2D tip) {
        lead.setStartX(from.getX());
        lead.setStartY(from.getY());
        lead.setControlX1(from.getX());
        lead.setControlY1(from.getY() - SLACK);
        lead.setControlX2(tip.getX() + LENGTH + SLACK);
        lead.setControlY2(tip.getY() - LENGTH - SLACK);
        lead.setEndX(tip.getX() + LENGTH);
        lead.setEndY(tip.getY() - LENGTH);
    }
}
