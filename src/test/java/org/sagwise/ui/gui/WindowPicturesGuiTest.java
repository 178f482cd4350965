package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TableView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The pictures of the window in the manual are taken of the real window, and look as it does today.
 * Letters are drawn a little differently from one machine to another: what is compared is how light
 * the picture is, tile by tile, which moves when something of the window does.
 */
class WindowPicturesGuiTest extends GuiTest {

    private static final Path FOLDER = Path.of("docs", "manual", "pictures");
    private static final boolean WRITE = Boolean.getBoolean("sagwise.write");
    private static final Pattern SHOWN = Pattern.compile("pictures/(window-[a-z]+)\\.[a-z]+\\.png");

    private static final String SETTINGS = "{\"notice_read\": 1000, \"language\": \"%s\", \"looks\": \"light\","
            + " \"motion\": \"reduced\", \"window\": {\"x\": 0, \"y\": 0, \"width\": 1180, \"height\": 664}}";

    /** Side of a tile, in pixels. */
    private static final int TILE = 16;

    /** By how much a tile may be lighter or darker, and how many may by more, in shares. */
    private static final double SHADE = 0.12;

    private static final double STRAYS = 0.02;

    /** How many times in a row a picture is the same before it is believed. */
    private static final int STILL = 4;

    private final Set<String> taken = new TreeSet<>();

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void picturesOfTheManual_areThoseOfTheWindowOfToday(String language) throws Exception {
        openWith(String.format(SETTINGS, language));
        robot().interact(((ButtonBase) node("latch"))::fire);
        compare("bench", language, "bench");
        robot().interact(((ButtonBase) node("latch"))::fire);

        robot().interact(() -> node("part-coil").requestFocus());
        robot().push(KeyCode.ENTER);
        settle();
        work("card-vary");
        await("vary-readout");
        compare("vary", language, "vary");
        robot().push(KeyCode.ESCAPE);

        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.D);
        settle();
        work("drawer-class");
        robot().interact(() ->
                ((TableView<?>) node("drawer-table")).getSelectionModel().select(0));
        compare("drawer", language, "drawer");
        robot().push(KeyCode.ESCAPE);

        robot().push(KeyCode.SHORTCUT, KeyCode.N);
        compare("shelf", language, "bench");

        robot().interact(((ButtonBase) node("tab-lessons"))::fire);
        settle();
        awaitLesson("lesson-01-close-the-ring");
        robot().interact(((ButtonBase) node("lesson-01-close-the-ring"))::fire);
        compare("lesson", language, "bench");
        assertEquals(shown(language), taken);
    }

    private void await(String id) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> !text(id).isEmpty());
    }

    /** The pictures of the window that the manual shows. */
    private static Set<String> shown(String language) throws IOException {
        Matcher found = SHOWN.matcher(Files.readString(Path.of("docs", "manual", "manual." + language + ".md")));
        Set<String> names = new TreeSet<>();
        while (found.find()) {
            names.add(found.group(1));
        }
        return names;
    }

    private void compare(String name, String language, String inside) throws Exception {
        settle();
        BufferedImage now = still(node(inside).getScene());
        taken.add("window-" + name);
        Path file = FOLDER.resolve("window-" + name + "." + language + ".png");
        if (WRITE) {
            ImageIO.write(now, "png", file.toFile());
        }
        BufferedImage kept = ImageIO.read(file.toFile());
        assertEquals(
                List.of(kept.getWidth(), kept.getHeight()), List.of(now.getWidth(), now.getHeight()), file.toString());
        double strays = strays(kept, now);
        assertTrue(strays <= STRAYS, file + ": " + strays + " of its tiles are others; see -Dsagwise.write=true");
    }

    /** Benches are painted behind the scenes: the picture is there once it stays the same for a while. */
    private BufferedImage still(Scene scene) throws Exception {
        Deque<BufferedImage> seen = new ArrayDeque<>();
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> {
            BufferedImage now = take(scene);
            if (!seen.isEmpty() && !Arrays.equals(pixels(seen.peek()), pixels(now))) {
                seen.clear();
            }
            seen.push(now);
            return seen.size() > STILL;
        });
        return seen.peek();
    }

    private BufferedImage take(Scene scene) {
        WritableImage[] seen = {null};
        robot().interact(() -> seen[0] = scene.snapshot(null));
        int width = (int) seen[0].getWidth();
        int height = (int) seen[0].getHeight();
        int[] pixels = new int[width * height];
        seen[0].getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        System.arraycopy(pixels, 0, pixels(picture), 0, pixels.length);
        return picture;
    }

    /** All pixels, row by row, those of our own pictures without a copy: some tens are compared. */
    private static int[] pixels(BufferedImage picture) {
        return picture.getType() == BufferedImage.TYPE_INT_RGB
                ? ((DataBufferInt) picture.getRaster().getDataBuffer()).getData()
                : picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    private static double strays(BufferedImage one, BufferedImage other) {
        int across = one.getWidth() / TILE;
        int down = one.getHeight() / TILE;
        int[] ones = pixels(one);
        int[] others = pixels(other);
        int strays = 0;
        for (int tile = 0; tile < across * down; tile++) {
            int corner = tile / across * TILE * one.getWidth() + tile % across * TILE;
            double apart = light(ones, corner, one.getWidth()) - light(others, corner, one.getWidth());
            strays += Math.abs(apart) > SHADE ? 1 : 0;
        }
        return (double) strays / (across * down);
    }

    /** How light a tile is, from 0 for black to 1. */
    private static double light(int[] pixels, int corner, int width) {
        long sum = 0;
        for (int y = 0; y < TILE; y++) {
            for (int x = 0; x < TILE; x++) {
                int rgb = pixels[corner + y * width + x];
                sum += (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
            }
        }
        return sum / (TILE * TILE * 3 * 255.0);
    }
}
