package org.sagwise.ui.document;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Knows what a file held when it was read or written last, and whether another window of the program
 * has it open: so that nobody's work is written over unseen. Windows know of each other by locks on
 * small files in the folder of the settings; the file itself stays free for every program.
 */
public final class FileWitness implements AutoCloseable {

    /** More than any scenario file holds; of a larger one the beginning tells. */
    private static final int MOST_BYTES = 16 << 20;

    private final Path folder;
    private Optional<Path> file = Optional.empty();
    private Optional<String> known = Optional.empty();
    private Optional<FileChannel> held = Optional.empty();
    private boolean alone = true;

    /**
     * @param folder where windows leave word for each other; it need not exist yet
     */
    public FileWitness(Path folder) {
        this.folder = folder;
    }

    /** The document belongs to this file from now on, which holds what the document holds. */
    void belongTo(Path path) {
        if (file.filter(path::equals).isEmpty()) {
            leave();
            file = Optional.of(path);
            claim(path);
        }
        known = fingerprint(path);
    }

    /** The document belongs to no file any more. */
    void leave() {
        release();
        file = Optional.empty();
        known = Optional.empty();
        alone = true;
    }

    /**
     * Whether a file that the document belongs to holds something else than when it was read or
     * written last. A file that is gone is no change: saving brings it back.
     */
    boolean isChanged(Path path) {
        return file.filter(path::equals).isPresent()
                && Files.exists(path)
                && !fingerprint(path).equals(known);
    }

    /** What the file holds now is known, and shall be written over. */
    void accept(Path path) {
        known = fingerprint(path);
    }

    /** Whether no other window has the file of the document open, as far as can be told. */
    boolean isAlone() {
        return alone;
    }

    private static Optional<String> fingerprint(Path path) {
        if (!Files.isRegularFile(path)) {
            return Optional.empty();
        }
        try (InputStream stream = new DigestInputStream(Files.newInputStream(path), sha256())) {
            stream.readNBytes(MOST_BYTES);
            return Optional.of(HexFormat.of()
                    .formatHex(((DigestInputStream) stream).getMessageDigest().digest()));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private void claim(Path path) {
        String name = HexFormat.of().formatHex(sha256().digest(path.toString().getBytes(UTF_8)), 0, 8);
        try {
            Files.createDirectories(folder);
            FileChannel channel = FileChannel.open(
                    folder.resolve(name + ".open"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (lock(channel).isPresent()) {
                held = Optional.of(channel);
            } else {
                channel.close();
                alone = false;
            }
        } catch (IOException cannotTell) {
            alone = true;
        }
    }

    private static Optional<FileLock> lock(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock());
        } catch (OverlappingFileLockException alsoHere) {
            return Optional.empty();
        }
    }

    /** The lock goes with its channel; the empty file that is left behind is nobody's. */
    private void release() {
        held.ifPresent(channel -> {
            try {
                channel.close();
            } catch (IOException gone) {
                // It goes with the process at the latest.
                return;
            }
        });
        held = Optional.empty();
    }

    @Override
    public void close() {
        release();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }
}
