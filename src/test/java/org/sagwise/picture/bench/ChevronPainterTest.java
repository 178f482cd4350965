package org.sagwise.picture.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.reading.Readings;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.report.pen.SvgPen;
import org.sagwise.scenario.Scenario;

class ChevronPainterTest {

    @Test
    void speed_ofMoreCurrent_isHigherByTheSameForEveryDecade() {
        double perDecade = ChevronPainter.speed(0.1) - ChevronPainter.speed(0.01);
        assertTrue(perDecade > 0);
        assertEquals(perDecade, ChevronPainter.speed(10) - ChevronPainter.speed(1), 1e-9);
        assertEquals(ChevronPainter.speed(4), ChevronPainter.speed(-4));
    }

    @Test
    void speed_belowAMilliamp_isZero() {
        assertEquals(0, ChevronPainter.speed(0.9e-3));
        assertEquals(0, ChevronPainter.speed(0));
        assertTrue(ChevronPainter.speed(1.1e-3) > 0);
    }

    @Test
    void paint_openCircuit_paintsNothing() {
        BenchScene scene = scene(Circuits.single(Circuits.cell("A", 4.2, 15), 1).released());
        ChevronPainter painter = new ChevronPainter(scene);
        assertFalse(painter.isMoving(scene.readings()));
        assertEquals(0, inked(image(painter, scene)));
    }

    @Test
    void paint_afterAWhile_hasDriftedButNotAfterARound() {
        BenchScene scene = scene(Circuits.single(Circuits.cell("A", 4.2, 15), 1));
        ChevronPainter painter = new ChevronPainter(scene);
        BufferedImage start = image(painter, scene);
        assertTrue(inked(start) > 300);
        double round = ChevronTrack.SPACING
                / ChevronPainter.speed(scene.readings().links().get(0).currentA());
        painter.advance(scene.readings(), round / 2);
        assertFalse(Arrays.equals(data(start), data(image(painter, scene))));
        painter.advance(scene.readings(), round / 2);
        int apart = 0;
        int[] now = data(image(painter, scene));
        for (int i = 0; i < now.length; i++) {
            apart += now[i] == data(start)[i] ? 0 : 1;
        }
        assertTrue(apart < inked(start) / 10, apart + " of " + inked(start));
    }

    @Test
    void current_onPlatesOfAParallelPack_isTheSumOfTheCellsBehind() {
        BenchScene scene = scene(Circuits.parallel(
                1, Circuits.cell("A", 4.2, 15), Circuits.cell("B", 4.2, 15), Circuits.cell("C", 4.2, 15)));
        Readings readings = scene.readings();
        double cell = readings.cells().get(0).currentA();
        for (Conductor conductor : scene.layout().conductors()) {
            double times = Math.abs(ChevronPainter.current(conductor, readings)) / cell;
            assertEquals(Math.round(times), times, 1e-6);
            assertTrue(times > 0.5 && times < 3.5);
        }
    }

    @Test
    void addTo_forwardAndBackward_pointOppositeWays() {
        BenchScene scene = scene(Circuits.single(Circuits.cell("A", 4.2, 15), 1));
        ChevronTrack track = new ChevronTrack(scene.layout().conductors().get(0), 8, 8, ChevronTrack.SPACING);
        Path.Builder forward = new Path.Builder();
        Path.Builder backward = new Path.Builder();
        track.addTo(forward, true, List.of());
        track.addTo(backward, false, List.of());
        assertTrue(forward.build().isDrawable());
        assertNotEquals(written(forward.build()), written(backward.build()));
    }

    private static String written(Path path) {
        SvgPen pen = new SvgPen(1);
        pen.fill(path, Colour.BLACK);
        return pen.svg(1, 1, "", "");
    }

    private static BenchScene scene(Scenario scenario) {
        return Scenes.of(scenario, Theme.LIGHT);
    }

    private static BufferedImage image(ChevronPainter painter, BenchScene scene) {
        BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_ARGB);
        Graphics2D surface = image.createGraphics();
        painter.paint(
                new Java2dPen(surface), scene, BenchView.fit(scene.layout().bounds(), 600, 400));
        surface.dispose();
        return image;
    }

    private static int[] data(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    private static int inked(BufferedImage image) {
        return (int) Arrays.stream(data(image)).filter(pixel -> pixel != 0).count();
    }
}
