package org.sagwise.ui.canvas;

import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Takes a picture of a bench as an image, on whatever thread. */
public final class Snapshot {

    private Snapshot() {}

    /** The scene as it is seen through a view, one pixel for each of the view's. */
    public static Image of(BenchScene scene, BenchView view) {
        int width = (int) Math.max(1, Math.ceil(view.width()));
        int height = (int) Math.max(1, Math.ceil(view.height()));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        StillPainter.paint(graphics, scene, view);
        graphics.dispose();
        WritableImage copy = new WritableImage(width, height);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        copy.getPixelWriter()
                .setPixels(
                        0, 0, width, height, PixelFormat.getIntArgbPreInstance(), pixels, 0, width);
        return copy;
    }
}
