package org.sagwise.report.pen;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.sagwise.picture.pen.Pen;

/** Pictures of pixels. */
public final class Pixels {

    private Pixels() {}

    /**
     * Writes a picture as PNG. The stream is not closed.
     *
     * @param opaque whether nothing behind it shows through
     * @throws IOException if the stream cannot be written to
     */
    public static void writePng(int width, int height, boolean opaque, Consumer<Pen> drawing, OutputStream out)
            throws IOException {
        int type = opaque ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB;
        BufferedImage image = new BufferedImage(width, height, type);
        Graphics2D surface = image.createGraphics();
        drawing.accept(new Java2dPen(surface));
        surface.dispose();
        if (!ImageIO.write(image, "png", out)) {
            throw new IllegalStateException("this Java has no writer for PNG");
        }
    }
}
