package org.sagwise.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the script lies that {@code LivePage} was compiled to: where the launcher says, or beside the packaged program. */
public final class PageEngine {

    private static final String PLACE = "sagwise.page.engine";
    private static final String BESIDE = "page/engine.js";

    private PageEngine() {}

    /** Whether there is one; costs no more than a look. */
    public static boolean isHere() {
        return places().anyMatch(Files::isRegularFile);
    }

    /** The script; empty where it was never compiled. */
    public static Optional<byte[]> read() {
        return places().filter(Files::isRegularFile).findFirst().flatMap(PageEngine::bytes);
    }

    private static Stream<Path> places() {
        return Stream.concat(told(), beside());
    }

    private static Stream<Path> told() {
        try {
            return Stream.of(System.getProperty(PLACE, ""))
                    .filter(place -> !place.isEmpty())
                    .map(Path::of);
        } catch (InvalidPathException wrong) {
            return Stream.empty();
        }
    }

    /** A packaged program has its engine beside its own archive of classes. */
    private static Stream<Path> beside() {
        CodeSource source = PageEngine.class.getProtectionDomain().getCodeSource();
        try {
            return source == null
                    ? Stream.empty()
                    : Stream.of(Path.of(source.getLocation().toURI()).resolveSibling(BESIDE));
        } catch (URISyntaxException | IllegalArgumentException | java.nio.file.FileSystemNotFoundException elsewhere) {
            return Stream.empty();
        }
    }

    private static Optional<byte[]> bytes(Path place) {
        try {
            return Optional.of(Files.readAllBytes(place));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }
}
