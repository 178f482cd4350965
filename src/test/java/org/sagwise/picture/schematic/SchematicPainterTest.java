package org.sagwise.picture.schematic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.picture.Awt;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Benches;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.report.picture.BenchPicture;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.scenario.Scenario;

class SchematicPainterTest {

    /** Two parallel plates: the longer line is plus (The Open University). */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void paint_cell_drawsTheLongerPlateOnThePositiveSide(Theme theme) {
        BenchScene scene = scene(Benches.all().get("single"), theme);
        PartBox cell = scene.layout().part("A").orElseThrow();
        Box bounds = scene.layout().bounds();
        BufferedImage image = paint(scene);
        int x = cell.x() - (int) bounds.x() + 24;
        int y = cell.y() - (int) bounds.y();
        Color ink = Awt.colour(theme.colour(Tone.CONDUCTOR_EDGE));
        Color ground = Awt.colour(theme.colour(Tone.FELT));
        assertTrue(cell.terminal("+").y() < cell.y(), "plus is on top");
        assertTrue(near(ink, new Color(image.getRGB(x, y - 7))), "long plate");
        assertEquals(ground, new Color(image.getRGB(x, y + 7)), "short plate");
        assertTrue(near(ink, new Color(image.getRGB(x - 12, y + 9))), "thick plate");
        assertEquals(ground, new Color(image.getRGB(x - 12, y - 10)), "thin plate");
    }

    @Test
    void of_twoCellsSideBySide_dotsTheTwoPlacesWhereThreeLinesMeet() {
        List<GridPoint> dots = dots("parallel-2");
        assertEquals(2, dots.size(), dots.toString());
        assertEquals(2, dots.stream().distinct().count());
    }

    @Test
    void of_rowOfCells_dotsNothing() {
        assertEquals(List.of(), dots("series-3"));
    }

    @Test
    void of_clipAcrossTheCoil_dotsBothItsEnds() {
        assertEquals(2, dots("bypassed").size());
    }

    @Test
    void paint_pressedSwitch_showsTheLeverDown() {
        Scenario single = Benches.all().get("single");
        assertNotEquals(
                pixels(paint(scene(single.pressed(), Theme.LIGHT)), "fire", single),
                pixels(paint(scene(single.released(), Theme.LIGHT)), "fire", single));
    }

    @Test
    void write_schematicSvg_keepsTextAsText() throws IOException {
        String svg = svg(Drawing.SCHEMATIC);
        assertTrue(svg.contains(">coil<") || svg.contains(">coil "), "name of the coil");
        assertTrue(svg.contains("0.50 Ω") || svg.contains("0.50\u202fΩ"), "its resistance");
        assertNotEquals(svg(Drawing.BENCH), svg);
    }

    private static String svg(Drawing drawing) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        BenchPicture.write(
                Scenes.assess(Benches.all().get("single")),
                drawing,
                PictureFormat.SVG,
                Locale.ENGLISH,
                Theme.LIGHT,
                PictureSize.FORUM,
                bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static List<GridPoint> dots(String bench) {
        return Junctions.of(layout(Benches.all().get(bench)));
    }

    private static BenchLayout layout(Scenario scenario) {
        return BenchLayout.of(scenario, 1, Drawing.SCHEMATIC);
    }

    private static BenchScene scene(Scenario scenario, Theme theme) {
        return BenchScene.of(Scenes.assess(scenario), layout(scenario), theme, Locale.ENGLISH);
    }

    private static BufferedImage paint(BenchScene scene) {
        Box bounds = scene.layout().bounds();
        BufferedImage image =
                new BufferedImage((int) bounds.width(), (int) bounds.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        StillPainter.paint(new Java2dPen(surface), scene, BenchView.fit(bounds, bounds.width(), bounds.height()));
        surface.dispose();
        return image;
    }

    private static List<Integer> pixels(BufferedImage image, String part, Scenario scenario) {
        BenchLayout layout = layout(scenario);
        GridBox body = layout.part(part).orElseThrow().body();
        int left = body.x() - (int) layout.bounds().x();
        int top = body.y() - (int) layout.bounds().y();
        int[] pixels = image.getRGB(left, top, body.width(), body.height(), null, 0, body.width());
        return Arrays.stream(pixels).boxed().toList();
    }

    private static boolean near(Color wanted, Color found) {
        return Math.abs(wanted.getRed() - found.getRed())
                        + Math.abs(wanted.getGreen() - found.getGreen())
                        + Math.abs(wanted.getBlue() - found.getBlue())
                < 90;
    }
}
