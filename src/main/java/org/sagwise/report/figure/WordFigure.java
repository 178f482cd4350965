package org.sagwise.report.figure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.picture.section.CellSection;
import org.sagwise.picture.section.CellSection.Piece;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.report.pen.SvgPen;
import org.sagwise.words.TradeWords;

/**
 * A small drawing beside a word of the glossary, made by the painters of the bench itself: a bench, its staircase, or
 * a cell cut open. Only words that a drawing helps have one.
 */
public final class WordFigure {

    /** Width and height, px. */
    public static final double WIDTH = 380;

    public static final double HEIGHT = 130;

    private static final int DECIMALS = 2;

    private enum Kind {
        BENCH,
        STAIRS,
        SECTION
    }

    /**
     * @param line the bench in one line of words
     * @param lit what stands out
     * @param piece the piece of the cut cell that stands out
     */
    private record Drawn(Kind kind, String line, Set<String> lit, Optional<Piece> piece) {

        static Drawn bench(String line, String... lit) {
            return new Drawn(Kind.BENCH, line, Set.of(lit), Optional.empty());
        }

        static Drawn stairs(String line, String... lit) {
            return new Drawn(Kind.STAIRS, line, Set.of(lit), Optional.empty());
        }

        static Drawn inside(Piece piece) {
            return new Drawn(Kind.SECTION, "", Set.of(), Optional.of(piece));
        }
    }

    private static final Map<String, Drawn> DRAWN = Map.ofEntries(
            Map.entry("ring", Drawn.bench("1s 3000 mAh 15 A; coil 1; ideal joints")),
            Map.entry("side-by-side", Drawn.bench("2p 3000 mAh 15 A; coil 1; ideal joints", "A", "B")),
            Map.entry("row", Drawn.bench("2s 3000 mAh 15 A; coil 2; ideal joints", "A", "B")),
            Map.entry("reversed", Drawn.bench("2s 3000 mAh 15 A; B reversed; coil 2; ideal joints", "B")),
            Map.entry("sag", Drawn.stairs("1s 3000 mAh 15 A 90 mohm; coil 0.5; ideal joints; held", "A")),
            Map.entry(
                    "drop", Drawn.stairs("1s 3000 mAh 15 A 1 mohm; coil 0.5; ideal joints; coil joint 90 mohm; held")),
            Map.entry("can", Drawn.inside(Piece.CAN)),
            Map.entry("wrap", Drawn.inside(Piece.WRAP)),
            Map.entry("vent", Drawn.inside(Piece.VENT)),
            Map.entry("guard", Drawn.inside(Piece.GUARD_BOARD)));

    private final Drawn drawn;
    private final Catalogue catalogue;
    private final Locale locale;

    private WordFigure(Drawn drawn, Catalogue catalogue, Locale locale) {
        this.drawn = drawn;
        this.catalogue = catalogue;
        this.locale = locale;
    }

    /** The words that have one, by their key in the glossary. */
    public static Set<String> words() {
        return DRAWN.keySet();
    }

    /** The drawing of a word; empty if it has none. */
    public static Optional<WordFigure> of(String word, Catalogue catalogue, Locale locale) {
        return Optional.ofNullable(DRAWN.get(word)).map(it -> new WordFigure(it, catalogue, locale));
    }

    /**
     * Paints it in a size.
     *
     * @param width px
     * @param height px
     */
    public void paint(Pen surface, Theme theme, double width, double height) {
        switch (drawn.kind()) {
            case BENCH -> bench(surface, theme, width, height);
            case STAIRS -> stairs(surface, theme, width, height);
            case SECTION -> section(surface, theme, width, height);
        }
    }

    private Assessment assessment() {
        return Assessment.of(
                TradeWords.read(drawn.line(), catalogue, Locale.ENGLISH)
                        .scenario()
                        .orElseThrow(),
                catalogue);
    }

    private void bench(Pen surface, Theme theme, double width, double height) {
        Assessment shown = assessment();
        BenchScene scene = BenchScene.of(shown, BenchLayout.of(shown.scenario()), theme, locale)
                .with(Set.of())
                .with(Emphasis.choosing(drawn.lit()));
        StillPainter.paint(surface, scene, BenchView.fit(scene.layout().bounds(), width, height));
    }

    private void stairs(Pen surface, Theme theme, double width, double height) {
        StairScene scene = StairScene.of(assessment(), theme, locale).with(Emphasis.choosing(drawn.lit()));
        StaircasePainter.of(scene, width, height).paint(surface);
    }

    /** Laid on its side: a cell is longer than wide. */
    private void section(Pen surface, Theme theme, double width, double height) {
        ThemedPen pen = new ThemedPen(surface, theme, 1);
        double scale = Math.min(width / CellSection.HEIGHT, height / CellSection.WIDTH);
        pen.scaled(scale, 0, 0, () -> pen.within(0, CellSection.WIDTH, 3, () -> CellSection.paint(pen, drawn.piece())));
    }

    /**
     * As SVG.
     *
     * @param title what it shows, for who cannot see it
     */
    public String svg(String title) {
        SvgPen pen = new SvgPen(DECIMALS);
        paint(pen, Theme.LIGHT, WIDTH, HEIGHT);
        return pen.svg((int) WIDTH, (int) HEIGHT, " role=\"img\"", title);
    }
}
