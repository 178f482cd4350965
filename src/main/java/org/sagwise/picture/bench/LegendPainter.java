package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ColourScale;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Figures;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Unit;

/**
 * The colour scale of potential above its lowest place, in the corner of the window where it covers
 * least.
 */
public final class LegendPainter {

    private static final int STEPS = 33;
    private static final double WIDTH = 136;
    private static final double BAR = 9;
    private static final double EDGE = 20;

    private final ThemedPen pen;
    private final BenchScene scene;
    private final BenchView view;
    private final Figures figures;

    LegendPainter(ThemedPen pen, BenchScene scene, BenchView view) {
        this.pen = pen.written(textScale(scene, view));
        this.scene = scene;
        this.view = view;
        this.figures = Figures.of(scene);
    }

    /** A view of all of a bench in which its legend covers nothing: the bench gives way to it where it must. */
    public static BenchView fit(BenchScene scene, double width, double height) {
        Box bounds = scene.layout().bounds();
        BenchView whole = BenchView.fit(bounds, width, height);
        if (!isShown(scene) || isClear(scene, whole)) {
            return whole;
        }
        Box place = place(scene, whole);
        double aside = place.width() + EDGE;
        double above = place.height() + EDGE;
        BenchView right = moved(BenchView.fit(bounds, width - aside, height), width, height, aside);
        BenchView up = moved(BenchView.fit(bounds, width, height - above), width, height, 0);
        return right.scale() >= up.scale() ? right : up;
    }

    /** A view in a larger window, its own one so far from the left. */
    private static BenchView moved(BenchView view, double width, double height, double aside) {
        return new BenchView(width, height, view.scale(), view.left() - aside / view.scale(), view.top());
    }

    /** Whether a picture has a legend: one without potentials, or whose figures are to be foretold, has none. */
    static boolean isShown(BenchScene scene) {
        return scene.shows(Detail.LEGEND) && !scene.isSchematic() && PotentialScale.isNeeded(scene.readings());
    }

    private static boolean isClear(BenchScene scene, BenchView view) {
        return covered(scene, view, place(scene, view)) == 0;
    }

    private static Box place(BenchScene scene, BenchView view) {
        double line = TextStyle.SMALL.lineHeight(textScale(scene, view));
        int bars = isHot(scene) ? 2 : 1;
        return corner(scene, view, bars * (2 * line + BAR + 8) - 2);
    }

    /** Its words are as large as the figures on the bench come out, and never smaller than usual. */
    private static double textScale(BenchScene scene, BenchView view) {
        return Math.max(1, scene.layout().textScale() * Math.min(1, view.scale()));
    }

    private static boolean isHot(BenchScene scene) {
        return scene.readings().coils().stream().anyMatch(coil -> coil.temperatureC() >= CoilPainter.WARM_C);
    }

    void paint(PotentialScale scale) {
        List<Bar> bars = new ArrayList<>();
        bars.add(new Bar(
                figures.texts().say("legend.potential"),
                ColourScale.CIVIDIS,
                volts(0),
                volts(scale.highV() - scale.lowV())));
        if (isHot(scene)) {
            bars.add(new Bar(
                    figures.texts().say("legend.heat"),
                    ColourScale.INFERNO,
                    figures.print(CoilPainter.DARK_C, Unit.CELSIUS),
                    figures.print(CoilPainter.BRIGHT_C, Unit.CELSIUS)));
        }
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        double each = 2 * line + BAR + 8;
        Box place = place(scene, view);
        if (covered(scene, view, place) > 0) {
            pen.fill(Round.between(place.x() - 7, place.y() - 5, place.right() + 7, place.bottom() + 3, 8), Tone.FELT);
        }
        double y = place.y();
        for (Bar bar : bars) {
            bar(bar, place.x(), y, line);
            y += each;
        }
    }

    /**
     * A colour scale with its name.
     *
     * @param low what stands at its dark end
     * @param high what stands at its bright end
     */
    private record Bar(String name, ColourScale colours, String low, String high) {}

    private void bar(Bar bar, double x, double top, double line) {
        double y = top + line;
        text(bar.name(), x, y - 5, Align.LEFT);
        for (int i = 0; i < STEPS; i++) {
            pen.fill(
                    new Box(x + WIDTH * i / STEPS, y, WIDTH / STEPS + 0.5, BAR),
                    bar.colours().at(i / (STEPS - 1.0)));
        }
        pen.draw(new Box(x, y, WIDTH, BAR), Tone.CONDUCTOR_EDGE, 1);
        double base = y + BAR + 0.8 * line;
        text(bar.low(), x, base, Align.LEFT);
        text(bar.high(), x + WIDTH, base, Align.RIGHT);
    }

    private String volts(double volts) {
        return figures.numbers().print(volts, Unit.VOLT.base(), Digits.decimals(1));
    }

    private void text(String text, double x, double y, Align align) {
        pen.text(text, x, y, TextStyle.SMALL, Tone.MUTED, align);
    }

    private static Box corner(BenchScene scene, BenchView view, double height) {
        double right = view.width() - EDGE - WIDTH;
        double low = view.height() - EDGE - height;
        Box best = null;
        double least = Double.MAX_VALUE;
        for (double[] at : new double[][] {{EDGE, low}, {right, low}, {EDGE, EDGE}, {right, EDGE}}) {
            Box place = new Box(at[0], at[1], WIDTH, height);
            double covered = covered(scene, view, place);
            if (covered < least) {
                least = covered;
                best = place;
            }
        }
        return best;
    }

    /** How much of the bench lies under a place: areas of parts and figures, lengths of links. */
    private static double covered(BenchScene scene, BenchView view, Box place) {
        double covered = 0;
        for (PartBox box : scene.layout().parts()) {
            covered += common(place, view.toWindow(box.body().box()));
            covered += common(place, view.toWindow(box.label().box()));
        }
        for (NoteBox note : scene.layout().notes()) {
            covered += common(place, view.toWindow(note.box().box()));
        }
        if (scene.layout().probes().isPresent()) {
            covered += common(
                    place, view.toWindow(scene.layout().probes().get().card().box()));
            covered += crossed(view, place, scene.layout().probes().get().redLead());
            covered += crossed(view, place, scene.layout().probes().get().blackLead());
        }
        for (LinkRoute route : scene.layout().routes()) {
            covered += crossed(view, place, route.points());
        }
        return covered;
    }

    private static double common(Box one, Box other) {
        return one.common(other).area();
    }

    private static double crossed(BenchView view, Box place, List<GridPoint> way) {
        double crossed = 0;
        for (int i = 1; i < way.size(); i++) {
            Line stretch = Line.between(
                    view.toWindow(way.get(i - 1).x(), way.get(i - 1).y()),
                    view.toWindow(way.get(i).x(), way.get(i).y()));
            if (stretch.meets(place)) {
                crossed += 1000;
            }
        }
        return crossed;
    }
}
