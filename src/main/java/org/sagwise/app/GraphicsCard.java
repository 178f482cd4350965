package org.sagwise.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Where Linux has no graphics card, JavaFX would load all of OpenGL, some 50 MB, only to find that it cannot use it. Told
 * here, so that every launcher does; GTK is told by the scripts that can ({@code GDK_GL}).
 */
final class GraphicsCard {

    private static final String RENDERER = "prism.order";

    private GraphicsCard() {}

    /** Has JavaFX draw in software where there is no card, unless somebody asked for something else. */
    static void passOver() {
        if (System.getProperty(RENDERER) == null
                && System.getProperty("os.name").equals("Linux")
                && Stream.of("/dev/dri", "/dev/nvidiactl", "/dev/dxg")
                        .map(Path::of)
                        .noneMatch(Files::exists)) {
            System.setProperty(RENDERER, "sw");
        }
    }
}
