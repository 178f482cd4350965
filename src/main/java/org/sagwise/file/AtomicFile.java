package org.sagwise.file;

import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

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

    private static final int MOST_LINKS = 40;

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

    /** Whether a pipe or a device is there: putting a file in its place would take it from everybody. */
    static boolean isNoFile(Path path) {
        return Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path);
    }

    static void write(Path target, byte[] bytes, Sink sink) throws IOException {
        if (isNoFile(target)) {
            throw new FileSystemException(target.toString(), null, "no file but a pipe or a device");
        }
        // In the same folder, so that moving it is one step on one disk.
        Path fresh = Unfinished.create(folder(target));
        try {
            try (FileChannel channel = FileChannel.open(fresh, WRITE)) {
                Unfinished.claim(channel);
                sink.write(channel, ByteBuffer.wrap(bytes));
            }
            keepPermissions(target, fresh);
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
        forceFolder(folder(target));
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
