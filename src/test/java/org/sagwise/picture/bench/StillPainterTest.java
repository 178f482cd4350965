package org.sagwise.picture.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.key.Keys;
import org.sagwise.picture.Awt;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.reading.States;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

class StillPainterTest {

    private static final int WIDTH = 800;
    private static final int HEIGHT = 450;

    static Stream<Scenario> scenarios() {
        return Scenes.scenarios().values().stream();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void paint_anyBenchInAnyTheme_leavesItsMarkAndTheTransform(Scenario scenario) {
        for (Theme theme : Theme.values()) {
            BufferedImage image = image(Scenes.of(scenario.pressed(), theme));
            assertEquals(Awt.colour(theme.colour(Tone.FELT)).getRGB() | 0xFF000000, image.getRGB(2, 2) | 0xFF000000);
            assertTrue(count(image, Awt.colour(theme.colour(Tone.FELT))) > WIDTH * HEIGHT / 10);
            assertTrue(scenario.parts().isEmpty()
                    || count(image, Awt.colour(theme.colour(Tone.FELT))) < 0.97 * WIDTH * HEIGHT);
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void captions_inBothLanguagesAndSizes_fitTheirPlaces(Scenario scenario) {
        for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
            for (double textScale : new double[] {1, 2}) {
                BenchScene scene = Scenes.of(scenario.pressed(), Theme.LIGHT, locale, textScale);
                Captions captions = new Captions(scene);
                for (PartBox box : scene.layout().parts()) {
                    Caption caption = captions.of(box);
                    assertTrue(
                            caption.height(textScale) <= box.label().height() + 0.5,
                            box.id() + " is too high: " + caption.rows());
                    for (Caption.Row row : caption.rows()) {
                        assertTrue(
                                0.7 * row.width(textScale) <= box.label().width(), box.id() + " is too wide: " + row);
                    }
                }
            }
        }
    }

    @Test
    void paint_firedAndLetGo_looksDifferent() {
        Scenario scenario = Scenes.demo("bench-check");
        assertFalse(same(
                image(Scenes.of(scenario.released(), Theme.LIGHT)), image(Scenes.of(scenario.pressed(), Theme.LIGHT))));
    }

    @Test
    void paint_reversedCell_isFlagged() {
        BenchScene scene = Scenes.of(Scenes.demo("side-by-side-one-reversed"), Theme.LIGHT);
        BenchScene plain = scene.with(Set.of(Detail.FIGURES));
        assertTrue(scene.signalOf("B").isPresent());
        Color flag = Awt.colour(Theme.LIGHT.colour(Tone.FLAG));
        assertTrue(count(image(scene), flag) > count(image(plain), flag) + 100);
    }

    @Test
    void paint_hotCoil_takesTheColourOfItsHeat() {
        Keys wire = Keys.of("alloy", "fecral-25-5", "awg", 26, "wraps", 8, "inner_mm", 3);
        Scenario wound = Scenes.demo("bench-check")
                .withPart("coil", coil -> coil.without("ohm").with("wire", wire));
        BenchScene cold = Scenes.of(wound.pressed(), Theme.LIGHT);
        States start = cold.states();
        States hot = new States(start.cells(), Map.of("coil", 260.0), start.linkC(), Set.of());
        BenchScene scene = cold.at(cold.bench().at(hot, Press.HELD), hot);
        Color heat = Awt.colour(CoilPainter.heat(260));
        assertEquals(0, count(image(cold), heat));
        assertTrue(count(image(scene), heat) > 300);
    }

    @Test
    void paint_emphasis_showsOnPartAndLink() {
        BenchScene scene = Scenes.of(Scenes.demo("bench-check"), Theme.LIGHT);
        Color chosen = Awt.colour(Theme.LIGHT.colour(Tone.CHOSEN));
        assertEquals(0, count(image(scene), chosen));
        assertTrue(count(image(scene.with(Emphasis.choosing(Set.of("coil")))), chosen) > 200);
        assertTrue(count(image(scene.with(Emphasis.pointingAt(Set.of(), Set.of(0)))), chosen) > 200);
    }

    @Test
    void levelWindow_underLoad_hatchesFromRestDownToTerminalVolts() {
        LevelWindow window = LevelWindow.of(4.0, 3.0, 4.0, 2.5);
        assertEquals(0.75, window.solid(), 1e-12);
        assertEquals(1, window.hatched(), 1e-12);
        assertEquals(0.625, window.cutoff(), 1e-12);
    }

    @Test
    void levelWindow_outOfRange_staysInTheGlass() {
        LevelWindow charged = LevelWindow.of(4.2, 5.0, 4.2, 2.5);
        assertEquals(1, charged.hatched(), 1e-12);
        assertEquals(0.84, charged.solid(), 1e-12);
        LevelWindow drivenBackward = LevelWindow.of(1, -2, 4.2, 2.5);
        assertEquals(0, drivenBackward.solid(), 1e-12);
    }

    private static BufferedImage image(BenchScene scene) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        AffineTransform before = surface.getTransform();
        StillPainter.paint(
                new Java2dPen(surface), scene, BenchView.fit(scene.layout().bounds(), WIDTH, HEIGHT));
        assertEquals(before, surface.getTransform());
        surface.dispose();
        return image;
    }

    private static int count(BufferedImage image, Color colour) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += (image.getRGB(x, y) & 0xFFFFFF) == (colour.getRGB() & 0xFFFFFF) ? 1 : 0;
            }
        }
        return count;
    }

    private static boolean same(BufferedImage one, BufferedImage other) {
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    return false;
                }
            }
        }
        return true;
    }
}
