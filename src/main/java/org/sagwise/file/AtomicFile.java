package org.sagwise.file;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Replaces a file in one step: whoever reads it sees the old or the new one, never half of one. */
final class AtomicFile {

    /** Where the bytes of the new file go; tests put in one that fails. */
    interface Sink {
        void write(FileChannel file, ByteBuffer bytes) throws IOException;
    }

    /** Writes everything and waits until it is on the disk. */
    static final Sink ON_DISK = (file, bytes) -> {
        while (bytes.hasRemaining()) {
            file.write(bytes);
        }
        file.force(true);
    };

    /** How the name of a new file ends: number of the process, then one for each file. */
    private static final Pattern LEFT = Pattern.compile("([0-9]{1,9})-[0-9]{1,4}\\.tmp");

    private static final int MOST_LINKS = 40;
    private static final int MOST_NAMES = 1_000;

    private AtomicFile() {}

    /** The file that a path means: where symbolic links lead, though nothing may be there yet. */
    static Path target(Path path) throws IOException {
        Path target = path;
        for (int i = 0; Files.isSymbolicLink(target); i++) {
            if (i == MOST_LINKS) {
                throw new FileSystemLoopException(path.toString());
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    static Path folder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return folder == null ? file.toAbsolutePath() : folder;
    }

    /**
     * Whether somebody took care that a file is not overwritten. Moving another file into its place
     * would work all the same, and so would writing as administrator, so permissions are asked.
     */
    static boolean isWriteProtected(Path file) throws IOException {
        if (!Files.exists(file)) {
            return false;
        }
        PosixFileAttributeView view = posix(file);
        return !Files.isWritable(file)
                || (view != null
                        && view.readAttributes().permissions().stream()
                                .noneMatch(permission -> permission.name().endsWith("_WRITE")));
    }

    static void write(Path target, byte[] bytes, Sink sink) throws IOException {
        Path fresh = createBeside(target);
        try {
            try (FileChannel channel = FileChannel.open(fresh, WRITE)) {
                sink.write(channel, ByteBuffer.wrap(bytes));
            }
            keepPermissions(target, fresh);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
        forceFolder(folder(target));
    }

    /** A new empty file in the same folder, so that moving it is one step on one disk. */
    private static Path createBeside(Path target) throws IOException {
        String stem = "." + target.getFileName() + ".";
        sweep(folder(target), stem);
        String name = stem + ProcessHandle.current().pid() + "-";
        for (int i = 0; i < MOST_NAMES; i++) {
            Path fresh = folder(target).resolve(name + i + ".tmp");
            try {
                FileChannel.open(fresh, CREATE_NEW, WRITE).close();
                // Ctrl-C in the middle of writing leaves nothing behind.
                fresh.toFile().deleteOnExit();
                return fresh;
            } catch (FileAlreadyExistsException e) {
                // Left by a process that died, or in use by another thread: take the next name.
                continue;
            }
        }
        throw new FileAlreadyExistsException(folder(target).resolve(name).toString());
    }

    /** Takes away what a process left that was killed while it wrote the same file. */
    private static void sweep(Path folder, String stem) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, file -> isLeft(file, stem))) {
            for (Path file : left) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | DirectoryIteratorException notOurs) {
            // Only tidiness: whoever may not list the folder can write to it all the same.
            return;
        }
    }

    private static boolean isLeft(Path file, String stem) {
        String name = file.getFileName().toString();
        if (!name.startsWith(stem)) {
            return false;
        }
        Matcher ours = LEFT.matcher(name.substring(stem.length()));
        return ours.matches() && ProcessHandle.of(Long.parseLong(ours.group(1))).isEmpty();
    }

    private static void keepPermissions(Path old, Path fresh) throws IOException {
        if (Files.exists(old) && posix(old) != null) {
            Set<PosixFilePermission> permissions = posix(old).readAttributes().permissions();
            posix(fresh).setPermissions(permissions);
        }
    }

    private static PosixFileAttributeView posix(Path file) {
        return Files.getFileAttributeView(file, PosixFileAttributeView.class);
    }

    /** Makes the new name itself last; not every system lets a folder be opened, and need not. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }
}
