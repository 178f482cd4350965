package org.sagwise.report.figure;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.LabelSide;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.pen.SvgPen;
import org.sagwise.scenario.Names;

/** A bench without its figures: those are for the learner to find. */
public final class BenchFigure {

    /** Width and height of the figure, in pixels of the screen's bench. */
    public static final int WIDTH = 900;

    public static final int HEIGHT = 330;

    /** Paper is read at arm's length, and the figure is smaller there than on screen. */
    private static final double NAME_SCALE = 1.4;

    private static final int DECIMALS = 2;

    private BenchFigure() {}

    /** Paints the figure in the upper left corner of a surface. */
    public static void paint(Pen surface, Assessment bench, Locale locale) {
        BenchLayout layout = BenchLayout.of(bench.scenario());
        BenchScene scene = BenchScene.of(bench, layout, Theme.LIGHT, locale).with(details());
        BenchView view = BenchView.fit(layout.bounds(), WIDTH, HEIGHT);
        StillPainter.paint(surface, scene, view);
        ThemedPen pen = new ThemedPen(surface, Theme.LIGHT, NAME_SCALE);
        for (PartBox box : layout.parts()) {
            name(pen, name(bench, box, locale), view.toWindow(box.label().box()), box.side());
        }
    }

    /** Writes a name where the figures would stand, close to the part. */
    private static void name(ThemedPen pen, String name, Box room, LabelSide side) {
        double middle = room.middleX();
        double level = room.middleY() + 6;
        TextStyle style = TextStyle.NAME;
        switch (side) {
            case ABOVE -> pen.text(name, middle, room.bottom() - 4, style, Tone.INK, Align.MIDDLE);
            case BELOW -> pen.text(name, middle, room.y() + 16, style, Tone.INK, Align.MIDDLE);
            case LEFT -> pen.text(name, room.right(), level, style, Tone.INK, Align.RIGHT);
            case RIGHT -> pen.text(name, room.x(), level, style, Tone.INK, Align.LEFT);
        }
    }

    /** What a part is called; of a coil also its resistance, which is no reading but given. */
    private static String name(Assessment bench, PartBox box, Locale locale) {
        String name = Names.in(locale).label(box.part());
        return bench.readings()
                .coil(box.id())
                .map(coil -> name + " " + QuantityFormat.forPeople(locale).print(coil.ohm(), Unit.OHM))
                .orElse(name);
    }

    private static Set<Detail> details() {
        EnumSet<Detail> details = EnumSet.noneOf(Detail.class);
        details.addAll(Detail.usual());
        details.remove(Detail.FIGURES);
        details.remove(Detail.FLAGS);
        details.remove(Detail.GRID);
        details.remove(Detail.LEGEND);
        return details;
    }

    /** The figure as an element of an HTML page. */
    public static String svg(Assessment bench, Locale locale) {
        SvgPen pen = new SvgPen(DECIMALS);
        paint(pen, bench, locale);
        return pen.svg(WIDTH, HEIGHT, "", "");
    }
}
