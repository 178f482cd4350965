package org.sagwise.ui.shell;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.image.Image;
import org.sagwise.report.picture.Icon;

/** The program's icon, in the sizes that window managers ask for. */
public final class WindowIcons {

    private WindowIcons() {}

    /** Paints it as PNG, on whatever thread. */
    public static List<byte[]> painted() {
        return Stream.of(16, 32, 48, 128).map(WindowIcons::png).toList();
    }

    static List<Image> images(List<byte[]> painted) {
        return painted.stream()
                .map(png -> new Image(new ByteArrayInputStream(png)))
                .toList();
    }

    private static byte[] png(int side) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            Icon.PROGRAM.writePng(side, png);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return png.toByteArray();
    }
}
