package org.sagwise.picture.bench;

import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.LinkReading;

/** Tags with amps and drop on conductors: on all when asked for, else on those pointed at. */
final class LinkTags {

    private static final double PADDING = 6;

    private final ThemedPen pen;
    private final BenchScene scene;

    LinkTags(ThemedPen pen, BenchScene scene) {
        this.pen = pen;
        this.scene = scene;
    }

    void paint() {
        for (LinkRoute route : scene.layout().routes()) {
            if (isTagged(route)) {
                tag(route);
            }
        }
    }

    private boolean isTagged(LinkRoute route) {
        return scene.shows(Detail.LINK_FIGURES) || scene.emphasis().links().contains(route.link());
    }

    /** Where tags lie, so that nothing else is drawn there. */
    List<Box> places() {
        return scene.layout().routes().stream()
                .filter(this::isTagged)
                .map(route -> place(route, text(route)))
                .toList();
    }

    private void tag(LinkRoute route) {
        String text = text(route);
        Box place = place(route, text);
        pen.plate(place, 7, Tone.PAPER, Tone.DROP, 1.4);
        pen.text(
                text,
                place.middleX(),
                place.middleY() + 4.4 * scene.layout().textScale(),
                TextStyle.SMALL_BOLD,
                Tone.DROP,
                Align.MIDDLE);
    }

    private Box place(LinkRoute route, String text) {
        double scale = scene.layout().textScale();
        GridPoint middle = route.middle();
        double half = TextStyle.SMALL_BOLD.width(text, scale) / 2 + PADDING;
        double high = 0.6 * TextStyle.SMALL_BOLD.lineHeight(scale) + 2;
        return new Box(middle.x() - half, middle.y() - high, 2 * half, 2 * high);
    }

    private String text(LinkRoute route) {
        Figures figures = Figures.of(scene);
        LinkReading reading = scene.readings().links().get(route.link());
        return Double.isNaN(reading.currentA())
                ? figures.texts().say(scene.readings().isVeiled() ? "part.asked" : "link.unknown")
                : figures.texts()
                        .say(
                                "link.figures",
                                figures.print(Math.abs(reading.currentA()), Unit.AMPERE),
                                figures.print(Math.abs(reading.dropV()), Unit.VOLT));
    }
}
