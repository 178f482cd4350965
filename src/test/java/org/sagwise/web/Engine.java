package org.sagwise.web;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The script of live pages as it was compiled. */
final class Engine {

    private Engine() {}

    /** The script; where it was not compiled, the test that asks is skipped and says so. */
    static byte[] compiled() throws IOException {
        String place = System.getProperty("sagwise.page.engine", "");
        assumeTrue(!place.isEmpty() && Files.exists(Path.of(place)), "no engine: run mvn -Ppage test");
        return Files.readAllBytes(Path.of(place));
    }
}
