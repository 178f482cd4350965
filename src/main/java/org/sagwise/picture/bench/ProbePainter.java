package org.sagwise.picture.bench;

import java.util.List;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.ProbeBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Detail;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;

/** The meter in the hand: its display, its dial, its leads and the two probes on terminals. */
final class ProbePainter {

    private final ThemedPen pen;
    private final BenchScene scene;
    private final ProbeBox box;

    private ProbePainter(ThemedPen pen, BenchScene scene, ProbeBox box) {
        this.pen = pen;
        this.scene = scene;
        this.box = box;
    }

    static void paint(ThemedPen pen, BenchScene scene, ProbeBox box) {
        new ProbePainter(pen, scene, box).paint();
    }

    private void paint() {
        if (!scene.shows(Detail.BLACK_IN_HAND)) {
            probe(box.blackLead(), box.black(), box.blackHandle(), Tone.PROBE_BLACK);
        }
        if (!scene.shows(Detail.RED_IN_HAND)) {
            probe(box.redLead(), box.red(), box.redHandle(), Tone.PROBE_RED);
        }
        GridBox card = box.card();
        double scale = box.scale();
        pen.plate(
                Box.between(card.x(), card.y(), card.right(), card.bottom()), 12 * scale, Tone.HOUSING, Tone.EDGE, 1.8);
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
        Box window = box.display();
        double width = window.width() - 10 * box.scale();
        double middle = window.middleY();
        boolean alone = caption.isEmpty();
        pen.textFit(
                texts.figure(reading.display()),
                window.middleX(),
                middle + (alone ? 6 : -1) * box.scale(),
                width,
                TextStyle.FIGURE,
                Tone.INK,
                Align.MIDDLE);
        if (!alone) {
            pen.textFit(
                    caption,
                    window.middleX(),
                    middle + 15 * box.scale(),
                    width,
                    TextStyle.SMALL,
                    Tone.INK,
                    Align.MIDDLE);
        }
    }

    /** A lead, and the probe that reaches from its end to the terminal. */
    private void probe(List<GridPoint> lead, TerminalPoint at, Line handle, Tone colour) {
        Path way = SoftPath.shape(lead, 34);
        pen.draw(way, Tone.CONDUCTOR_EDGE, 4);
        pen.draw(way, colour, 2.4);
        pen.line(at.x(), at.y(), handle.x1(), handle.y1(), Tone.CONDUCTOR_EDGE, 5);
        pen.line(at.x(), at.y(), handle.x1(), handle.y1(), Tone.METAL_LIGHT, 2.4);
        pen.line(handle.x1(), handle.y1(), handle.x2(), handle.y2(), Tone.EDGE, 11);
        pen.line(handle.x1(), handle.y1(), handle.x2(), handle.y2(), colour, 8);
    }
}
