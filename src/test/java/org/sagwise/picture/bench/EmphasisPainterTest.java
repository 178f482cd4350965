package org.sagwise.picture.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Circuits;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.report.pen.Java2dPen;

class EmphasisPainterTest {

    private static final int WIDTH = 600;
    private static final int HEIGHT = 400;

    private final BenchScene scene = Scenes.of(Circuits.single(Circuits.cell("A", 4.2, 15), 1), Theme.LIGHT)
            .with(Set.of(Detail.FIGURES));

    @Test
    void paint_nothingStandsOut_paintsNothing() {
        assertEquals(0, inked(image(Emphasis.NONE)));
    }

    @Test
    void paint_partPointedAt_ringsItAndLeavesItFree() {
        BufferedImage image = image(Emphasis.pointingAt(Set.of("A"), Set.of()));
        Box body = view().toWindow(scene.layout().part("A").orElseThrow().body().box());

        assertTrue(inked(image) > 0);
        for (int x = (int) body.x() + 1; x < (int) body.right(); x++) {
            assertEquals(0, image.getRGB(x, (int) body.middleY()), "at " + x);
        }
    }

    @Test
    void paint_linkPointedAt_surroundsWhatIsSeenOfItAndTagsIt() {
        BufferedImage alone = image(Emphasis.pointingAt(Set.of(), Set.of(0)));
        BufferedImage both = image(Emphasis.pointingAt(Set.of("A"), Set.of(0)));

        assertTrue(inked(alone) > 0);
        assertTrue(inked(both) > inked(alone));
        assertFalse(
                isPainted(alone, scene.layout().part("A").orElseThrow().body().box()));
    }

    private boolean isPainted(BufferedImage image, Box area) {
        Box seen = view().toWindow(area);
        return image.getRGB((int) seen.middleX(), (int) seen.middleY()) != 0;
    }

    private BufferedImage image(Emphasis emphasis) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
        Graphics2D surface = image.createGraphics();
        EmphasisPainter.paint(new Java2dPen(surface), scene.with(emphasis), view());
        surface.dispose();
        return image;
    }

    private BenchView view() {
        return BenchView.fit(scene.layout().bounds(), WIDTH, HEIGHT);
    }

    private static int inked(BufferedImage image) {
        int inked = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                inked += image.getRGB(x, y) == 0 ? 0 : 1;
            }
        }
        return inked;
    }
}
