package org.sagwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;

/** Writes what a call asked to have in a file; whatever goes wrong is told in words. */
final class OutputFile {

    private static final String STANDARD_OUTPUT = "-";

    private final CallContext call;
    private final String name;
    private final Overwriting overwriting;
    private final List<String> inputs;

    /**
     * A file that must not be there yet.
     *
     * @param name as the call named it
     */
    OutputFile(CallContext call, String name) {
        this(call, name, new Overwriting(), List.of());
    }

    /**
     * @param name as the call named it
     * @param overwriting whether it may replace a file
     * @param inputs what the call reads: never replaced
     */
    OutputFile(CallContext call, String name, Overwriting overwriting, List<String> inputs) {
        this.call = call;
        this.name = name;
        this.overwriting = overwriting;
        this.inputs = inputs;
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
        if (folder != null && !Files.isDirectory(folder)) {
            return Optional.of(call.texts().say("out.no-folder", folder.toString()));
        }
        if (Files.isRegularFile(path) && inputs.stream().anyMatch(input -> isSame(path, input))) {
            return Optional.of(call.texts().say("out.input", name));
        }
        return Files.isRegularFile(path) && !overwriting.isWanted()
                ? Optional.of(call.texts().say("out.exists", name))
                : Optional.empty();
    }

    /** Whether a name that the call reads is this very file, whatever it is called there. */
    private static boolean isSame(Path path, String input) {
        try {
            Path read = Path.of(input);
            return Files.exists(read) && Files.isSameFile(path, read);
        } catch (InvalidPathException | IOException odd) {
            return false;
        }
    }

    /** What stands behind the last point of a name, in small letters; empty if there is none. */
    static String ending(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        int point = last.lastIndexOf('.');
        return point < 0 ? "" : last.substring(point + 1).toLowerCase(Locale.ROOT);
    }

    /** The system's own words where it has any; the name of the file, which some give, is none. */
    private String reason(IOException failure) {
        String message = failure.getMessage();
        return message == null || message.equals(name) ? failure.getClass().getSimpleName() : message;
    }
}
