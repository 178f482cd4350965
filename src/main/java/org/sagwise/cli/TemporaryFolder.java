package org.sagwise.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.sagwise.text.Texts;

/** The system's folder for files that nobody keeps: Java unpacks typefaces and libraries there. */
final class TemporaryFolder {

    /** As much as a typeface has, bytes. */
    private static final int ENOUGH = 512 * 1024;

    private TemporaryFolder() {}

    /** What keeps files from being written there, in words; empty if they can be. */
    static Optional<String> trouble(Texts texts) {
        return trouble(Path.of(System.getProperty("java.io.tmpdir", "")), texts);
    }

    static Optional<String> trouble(Path folder, Texts texts) {
        try {
            Path tried = Files.createTempFile(folder, "sagwise", null);
            try {
                Files.write(tried, new byte[ENOUGH]);
            } finally {
                Files.deleteIfExists(tried);
            }
            return Optional.empty();
        } catch (IOException full) {
            return Optional.of(texts.say("failed.temp", folder));
        }
    }
}
