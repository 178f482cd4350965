package org.sagwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;

/** Writes what a call asked to have in a file; whatever goes wrong is told in words. */
final class OutputFile {

    private static final String STANDARD_OUTPUT = "-";

    private final CallContext call;
    private final String name;

    /**
     * @param name as the call named it
     */
    OutputFile(CallContext call, String name) {
        this.call = call;
        this.name = name;
    }

    /** Writes a text, as UTF-8 if to a file, and gives the exit status. */
    int write(String text) {
        if (isStandardOutput(name)) {
            call.out().print(text);
            return ExitStatus.DONE;
        }
        return write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes and gives the exit status. */
    int write(byte[] bytes) {
        Optional<String> wrong = wrong();
        if (wrong.isPresent()) {
            call.problem(wrong.get());
            return ExitStatus.WRONG;
        }
        Path path = Path.of(name);
        return Files.exists(path) && !Files.isRegularFile(path) ? poured(path, bytes) : kept(bytes);
    }

    /** Nothing can stand beside a device or a pipe. */
    private int poured(Path device, byte[] bytes) {
        try {
            Files.write(device, bytes);
            return ExitStatus.DONE;
        } catch (IOException failure) {
            call.problem(call.texts().say("out.failed", name, reason(failure)));
            return ExitStatus.WRONG;
        }
    }

    /** Whole or not at all. */
    private int kept(byte[] bytes) {
        if (ScenarioFiles.save(Path.of(name), bytes) instanceof Saved.Failed failed) {
            call.problem(failed.problem().text(call.locale()));
            return ExitStatus.WRONG;
        }
        return ExitStatus.DONE;
    }

    /** Whether this name stands for standard output, as {@code -} stands for standard input. */
    static boolean isStandardOutput(String name) {
        return name.equals(STANDARD_OUTPUT);
    }

    /** What keeps this name from being written to, as far as can be told ahead. */
    Optional<String> wrong() {
        Path path;
        try {
            path = Path.of(name);
        } catch (InvalidPathException odd) {
            return Optional.of(call.texts().say("wrong.name"));
        }
        if (name.isBlank()) {
            return Optional.of(call.texts().say("wrong.name"));
        }
        if (isStandardOutput(name)) {
            return Optional.of(call.texts().say("out.no-text"));
        }
        if (Files.isDirectory(path)) {
            return Optional.of(call.texts().say("out.folder", name));
        }
        Path folder = path.toAbsolutePath().getParent();
        return folder == null || Files.isDirectory(folder)
                ? Optional.empty()
                : Optional.of(call.texts().say("out.no-folder", folder.toString()));
    }

    /** The system's own words where it has any; the name of the file, which some give, is none. */
    private String reason(IOException failure) {
        String message = failure.getMessage();
        return message == null || message.equals(name) ? failure.getClass().getSimpleName() : message;
    }
}
