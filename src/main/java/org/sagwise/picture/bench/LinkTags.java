package org.sagwise.picture.bench;

import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.LinkReading;

import java.awt.Point;

/** Tags with amps and drop on conductors: on all when asked for, else on those pointed at. */
final class LinkTags {

    private static final double PADDING = 6;

    private final Pen pen;
    private final BenchScene scene;
    private final Figures figures;

    LinkTags(Pen pen, BenchScene scene) {
        this.pen = pen;
        this.scene = scene;
        this.figures = Figures.of(scene);
    }

    void paint() {
        for (LinkRoute route : scene.layout().routes()) {
            if (scene.shows(Detail.LINK_FIGURES)
                    || scene.emphasis().links().contains(route.link())) {
                tag(route.middle(), scene.readings().links().get(route.link()));
            }
        }
    }

    private void tag(Point at, LinkReading reading) {
        String text =
                Double.isNaN(reading.currentA())
                        ? figures.texts().say("link.unknown")
                        : figures.texts()
                                .say(
                                        "link.figures",
                                        figures.print(Math.abs(reading.currentA()), Unit.AMPERE),
                                        figures.print(Math.abs(reading.dropV()), Unit.VOLT));
        double scale = pen.textScale();
        double half = TextStyle.SMALL_BOLD.width(text, scale) / 2 + PADDING;
        double high = 0.6 * TextStyle.SMALL_BOLD.lineHeight(scale) + 2;
        pen.plate(
                Shapes.box(at.x - half, at.y - high, at.x + half, at.y + high),
                7,
                Tone.PAPER,
                Tone.DROP,
                1.4);
        pen.text(text, at.x, at.y + 4.4 * scale, TextStyle.SMALL_BOLD, Tone.DROP, Align.MIDDLE);
    }
}
