package org.sagwise.demo;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.sagwise.file.DemoScenarios;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.report.pen.Java2dPen;

/**
 * Paints the picture at the top of the README: the opening bench with the button held. Run it after
 * a change of looks, with the file to write as its argument: {@code docs/images/bench.png}.
 */
public final class ReadmePicture {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 600;

    private ReadmePicture() {}

    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[0]);
        BenchScene scene = Scenes.of(Scenes.demo(DemoScenarios.OPENING).pressed(), Theme.LIGHT);
        BenchView view = BenchView.fit(scene.layout().bounds(), WIDTH, HEIGHT);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        StillPainter.paint(new Java2dPen(surface), scene, view);
        ChevronPainter.paintStill(new Java2dPen(surface), scene, view);
        surface.dispose();
        Files.createDirectories(target.toAbsolutePath().getParent());
        ImageIO.write(image, "png", target.toFile());
    }
}
