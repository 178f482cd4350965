package org.sagwise.ui.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** Makes the typeface that the program brings along known to JavaFX. */
public final class Fonts {

    private static final String FOLDER = "/org/sagwise/fonts/";
    private static final List<String> FILES =
            List.of("SourceSans3-Regular.ttf", "SourceSans3-Bold.ttf", "SourceSans3-Italic.ttf");

    private Fonts() {}

    /** May be called again. */
    public static void load() {
        FILES.forEach(Fonts::load);
    }

    private static void load(String name) {
        try (InputStream file = Fonts.class.getResourceAsStream(FOLDER + name)) {
            if (Font.loadFont(file, 0) == null) {
                throw new IllegalStateException("the font " + name + " cannot be read");
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
