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
final class WindowIcons {

    private WindowIcons() {}

    static List<Image> all() {
        return Stream.of(16, 32, 48, 128).map(WindowIcons::image).toList();
    }

    private static Image image(int side) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            Icon.PROGRAM.writePng(side, png);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new Image(new ByteArrayInputStream(png.toByteArray()));
    }
}
