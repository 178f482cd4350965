package org.sagwise.ui.kit;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.report.pen.Java2dPen;

/** Takes a picture as an image, on whatever thread. */
public final class Snapshot {

    private Snapshot() {}

    /** The scene as it is seen through a view, one pixel for each of the view's. */
    public static Image of(BenchScene scene, BenchView view) {
        Painting painting = (surface, width, height) -> StillPainter.paint(surface, scene, view);
        return of(painting, view.width(), view.height(), 1);
    }

    /**
     * A painting in a size.
     *
     * @param scale physical pixels for each of the painting's
     */
    static Image of(Painting painting, double width, double height, double scale) {
        int across = (int) Math.max(1, Math.ceil(width * scale));
        int down = (int) Math.max(1, Math.ceil(height * scale));
        BufferedImage image = new BufferedImage(across, down, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        painting.paint(new Java2dPen(graphics), width, height);
        graphics.dispose();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        return new WritableImage(
                new PixelBuffer<>(across, down, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()));
    }
}
