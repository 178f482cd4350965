package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.report.pen.Java2dPen;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What the pen of the window draws, against what the pen of the exports draws. */
@Tag("gui")
class CanvasPenGuiTest {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 500;

    /** Sum of the differences of all channels from which a pixel counts as another. */
    private static final int SEEN = 150;

    /** Edges are smoothed another way; a letter or a line out of its place is far more. */
    private static final double SMOOTHED_SHARE = 0.01;

    @BeforeAll
    static void openToolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench-check", "row-of-three-one-reversed", "two-by-two", "meter-left-on-amps"})
    void paint_anyBench_isThePictureOfTheExports(String demo) throws Exception {
        BenchScene scene = Scenes.of(Scenes.demo(demo).pressed(), Theme.LIGHT, Locale.ENGLISH, 1);
        BufferedImage exported = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
        paint(new Java2dPen(exported.createGraphics()), scene);
        WritableImage shown = WaitForAsyncUtils.asyncFx(() -> onCanvas(scene)).get();

        int others = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                others += far(exported.getRGB(x, y), shown.getPixelReader().getArgb(x, y)) >= SEEN ? 1 : 0;
            }
        }
        double share = (double) others / (WIDTH * HEIGHT);
        assertTrue(share < SMOOTHED_SHARE, "pixels that differ: " + share);
    }

    private static WritableImage onCanvas(BenchScene scene) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        new Scene(new Group(canvas), WIDTH, HEIGHT);
        paint(new CanvasPen(canvas.getGraphicsContext2D(), new Letters()), scene);
        return canvas.snapshot(null, null);
    }

    private static void paint(Pen pen, BenchScene scene) {
        BenchView view = BenchView.fit(scene.layout().bounds(), WIDTH, HEIGHT);
        StillPainter.paint(pen, scene, view);
        ChevronPainter.paintStill(pen, scene, view);
    }

    private static int far(int one, int other) {
        int far = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            far += Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF));
        }
        return far;
    }
}
