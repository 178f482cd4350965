package org.sagwise.web.engine;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.bench.LegendPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.KnownLayouts;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.picture.section.CellSection;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.report.pen.SvgPen;

/** The pictures of the live page as text of SVG: what the window paints, by the same painters. */
public final class Pictures {

    private static final int DECIMALS = 2;

    /** Below this a page is one of a phone, CSS pixels. */
    private static final double NARROW = 500;

    private static final double WIDE = 800;

    /** So many parts make even a wide page small. */
    private static final int MANY_PARTS = 12;

    /** Height of the smallest letters that people read without effort, CSS pixels. */
    private static final double LEAST_LETTERS = 9;

    private static final double SMALL_LETTERS = 8.2;
    private static final double TOO_SMALL_LETTERS = 6.8;

    /** A narrow page has no room for the scale of potential. */
    private static final Set<Detail> WITHOUT_LEGEND = Detail.usual().stream()
            .filter(detail -> detail != Detail.LEGEND)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Detail.class)));

    private static final Set<Detail> USUAL = Detail.usual();

    private Pictures() {}

    /** Where everything lies, for a page of a width: on a narrow one words are larger against the parts. */
    public static BenchLayout layout(Assessment bench, Drawing drawing, double width) {
        return layout(bench, drawing, width, new KnownLayouts());
    }

    /** The same, by layouts that remember. */
    public static BenchLayout layout(Assessment bench, Drawing drawing, double width, KnownLayouts layouts) {
        boolean isSmall = width < WIDE || bench.scenario().parts().size() > MANY_PARTS;
        return layouts.of(bench.scenario(), width < NARROW ? 2 : isSmall ? 1.4 : 1, drawing);
    }

    /** What is painted. */
    public static BenchScene scene(
            Assessment bench, BenchLayout layout, Theme theme, Locale locale, Emphasis emphasis, double width) {
        return BenchScene.of(bench, layout, theme, locale).with(emphasis).with(width < NARROW ? WITHOUT_LEGEND : USUAL);
    }

    /** Whether the smallest words of a bench are small in a view of it. */
    public static boolean isSmall(BenchLayout layout, BenchView view) {
        return letters(layout) * view.scale() < SMALL_LETTERS;
    }

    /** Whether they are so small that it is better to see a part of it first. */
    public static boolean isTooSmall(BenchLayout layout, BenchView view) {
        return letters(layout) * view.scale() < TOO_SMALL_LETTERS;
    }

    /** Height of the smallest letters, units of the bench. */
    private static double letters(BenchLayout layout) {
        return TextStyle.SMALL.face(layout.textScale()).size();
    }

    /** How wide a bench is drawn so that its smallest words can be read without effort. */
    public static double readableWidth(BenchLayout layout) {
        return Math.round(LEAST_LETTERS / letters(layout) * layout.bounds().width());
    }

    /** How high it is drawn then. */
    public static double readableHeight(BenchLayout layout) {
        return readableWidth(layout)
                * layout.bounds().height()
                / layout.bounds().width();
    }

    /** How high a bench is drawn in a column of this width, at most so high. */
    public static double height(BenchLayout layout, double width, double most) {
        double wanted = width * layout.bounds().height() / layout.bounds().width();
        return Math.round(Math.max(0.5 * most, Math.min(most, wanted)));
    }

    /** A view of all of a bench; its scale of potential covers nothing of it. */
    public static BenchView view(BenchScene scene, double width, double height) {
        return LegendPainter.fit(scene, width, height);
    }

    public static String bench(BenchScene scene, BenchView view) {
        SvgPen pen = new SvgPen(DECIMALS);
        StillPainter.paint(pen, scene, view);
        return svg(pen, view.width(), view.height());
    }

    public static String stairs(
            Assessment bench, Theme theme, Locale locale, Emphasis emphasis, double width, double height) {
        SvgPen pen = new SvgPen(DECIMALS);
        StaircasePainter.of(StairScene.of(bench, theme, locale).with(emphasis), width, height)
                .paint(pen);
        return svg(pen, width, height);
    }

    /** A round cell cut open, one piece standing out. */
    public static String inside(Theme theme, Optional<CellSection.Piece> pointed) {
        SvgPen pen = new SvgPen(DECIMALS);
        CellSection.paint(new ThemedPen(pen, theme, 1), pointed);
        return svg(pen, CellSection.WIDTH, CellSection.HEIGHT);
    }

    private static String svg(SvgPen pen, double width, double height) {
        return pen.svg((int) width, (int) height, " aria-hidden=\"true\"", "");
    }
}
