package org.sagwise.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** The process that wrote a file whose name tells the process's number. */
public final class Writer {

    private Writer() {}

    /** Whether the process that wrote a file may still run, as far as this machine can tell. */
    public static boolean mayLive(long process, Path file) {
        return ProcessHandle.of(process)
                .filter(running -> running.isAlive() && mayHaveWritten(running, file))
                .isPresent();
    }

    /** Numbers of processes come round again: one that began after the writing is another. */
    private static boolean mayHaveWritten(ProcessHandle running, Path file) {
        Optional<Instant> began = running.info().startInstant();
        try {
            Instant written = Files.getLastModifiedTime(file).toInstant();
            return began.isEmpty() || !began.get().isAfter(written);
        } catch (IOException unknown) {
            return true;
        }
    }
}
