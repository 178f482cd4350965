package org.sagwise.picture.bench;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.layout.ProbeBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Detail;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;

/** The meter in the hand: its display, its dial, its leads and the two probes on terminals. */
final class ProbePainter {

    private final Pen pen;
    private final BenchScene scene;
    private final ProbeBox box;

    private ProbePainter(Pen pen, BenchScene scene, ProbeBox box) {
        this.pen = pen;
        this.scene = scene;
        this.box = box;
    }

    static void paint(Pen pen, BenchScene scene, ProbeBox box) {
        new ProbePainter(pen, scene, box).paint();
    }

    private void paint() {
        if (!scene.shows(Detail.BLACK_IN_HAND)) {
            probe(box.blackLead(), box.black(), box.blackHandle(), Tone.PROBE_BLACK);
        }
        if (!scene.shows(Detail.RED_IN_HAND)) {
            probe(box.redLead(), box.red(), box.redHandle(), Tone.PROBE_RED);
        }
        Rectangle card = box.card();
        double scale = box.scale();
        pen.plate(Shapes.box(card.x, card.y, card.getMaxX(), card.getMaxY()), 12 * scale, Tone.HOUSING, Tone.EDGE, 1.8);
        pen.plate(box.display(), 6 * scale, Tone.LEVEL_GROUND, Tone.PAPER_EDGE, 1.4);
        scene.readings().probes().ifPresent(this::figure);
        Dial.paint(
                pen,
                scale,
                box.knob(),
                box::letter,
                scene.scenario().probes().orElseThrow().mode(),
                MeterMode.values());
    }

    private void figure(ProbeReading reading) {
        MeterTexts texts = MeterTexts.in(scene.locale());
        String caption = texts.caption(reading.display());
        Rectangle2D window = box.display();
        double width = window.getWidth() - 10 * box.scale();
        double middle = window.getCenterY();
        boolean alone = caption.isEmpty();
        pen.textFit(
                texts.figure(reading.display()),
                window.getCenterX(),
                middle + (alone ? 6 : -1) * box.scale(),
                width,
                TextStyle.FIGURE,
                Tone.INK,
                Align.MIDDLE);
        if (!alone) {
            pen.textFit(
                    caption,
                    window.getCenterX(),
                    middle + 15 * box.scale(),
                    width,
                    TextStyle.SMALL,
                    Tone.INK,
                    Align.MIDDLE);
        }
    }

    /** A lead, and the probe that reaches from its end to the terminal. */
    private void probe(List<Point> lead, TerminalPoint at, Line2D handle, Tone colour) {
        Path2D way = SoftPath.shape(lead, 34);
        pen.draw(way, Tone.CONDUCTOR_EDGE, 4);
        pen.draw(way, colour, 2.4);
        pen.line(at.x(), at.y(), handle.getX1(), handle.getY1(), Tone.CONDUCTOR_EDGE, 5);
        pen.line(at.x(), at.y(), handle.getX1(), handle.getY1(), Tone.METAL_LIGHT, 2.4);
        pen.line(handle.getX1(), handle.getY1(), handle.getX2(), handle.getY2(), Tone.EDGE, 11);
        pen.line(handle.getX1(), handle.getY1(), handle.getX2(), handle.getY2(), colour, 8);
    }
}
