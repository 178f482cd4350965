package org.sagwise.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;

/**
 * The file of a drawer. It is written whole or not at all; what it held before the last change stays
 * beside it in a copy; and what somebody else wrote meanwhile is never written over.
 */
public final class DrawerFile {

    /** What a drawer's file is called in the folder of the user's data. */
    public static final String NAME = "drawer.json";

    /** One change at a time within this program; between programs the lock on a file keeps order. */
    private static final Object TURN = new Object();

    private final Path path;
    private final Catalogue catalogue;

    /**
     * @param path where it is; neither it nor its folder need exist
     */
    public DrawerFile(Path path, Catalogue catalogue) {
        this.path = path;
        this.catalogue = catalogue;
    }

    public Path path() {
        return path;
    }

    /** The file with what it held before the last change. */
    public Path copy() {
        return path.resolveSibling(path.getFileName() + ".before");
    }

    /** What the file held when it was read or written last: by this a change by others is known. */
    public static final class Stamp {

        private final Optional<byte[]> held;

        private Stamp(Optional<byte[]> held) {
            this.held = held;
        }

        private boolean is(Optional<byte[]> now) {
            return held.isPresent() == now.isPresent() && (held.isEmpty() || Arrays.equals(held.get(), now.get()));
        }
    }

    /** What came of opening the file. */
    public sealed interface Opened {

        /**
         * It is there, or there is none yet, which is an empty drawer.
         *
         * @param stamp what the file held
         */
        record Ok(Drawer drawer, Stamp stamp) implements Opened {}

        /**
         * It cannot be used, and is left as it is.
         *
         * @param findings why, from the top of the file down
         */
        record Refused(List<Finding> findings) implements Opened {}
    }

    /** What came of keeping a drawer. */
    public sealed interface Kept {

        /** It is on the disk. */
        record Done(Stamp stamp) implements Kept {}

        /** Nothing was written; what was there is still there. */
        record Failed(Finding problem) implements Kept {}
    }

    /** Opens the file. */
    public Opened open() {
        try {
            if (Files.isDirectory(path)) {
                return refused(Finding.of("", Problem.FILE_IS_FOLDER, path.toString()));
            }
            Optional<byte[]> bytes = bytes();
            if (bytes.isEmpty()) {
                return new Opened.Ok(Drawer.EMPTY, new Stamp(bytes));
            }
            if (DrawerReader.read(bytes.get(), catalogue) instanceof DrawerReader.Read.Ok ok) {
                return new Opened.Ok(ok.drawer(), new Stamp(bytes));
            }
            return new Opened.Refused(
                    ((DrawerReader.Read.Refused) DrawerReader.read(bytes.get(), catalogue)).findings());
        } catch (IOException e) {
            return refused(Finding.of("", Problem.FILE_UNREADABLE, path.toString(), ScenarioFiles.reason(e)));
        }
    }

    private Opened refused(Finding finding) {
        return new Opened.Refused(List.of(finding));
    }

    private Optional<byte[]> bytes() throws IOException {
        try {
            return Optional.of(Files.readAllBytes(path));
        } catch (NoSuchFileException nothingYet) {
            return Optional.empty();
        }
    }

    /**
     * Writes the file, unless it holds something else by now than it did.
     *
     * @param before what it held when the drawer was read
     */
    public Kept keep(Drawer drawer, Stamp before) {
        byte[] bytes = DrawerWriter.write(drawer).getBytes(StandardCharsets.UTF_8);
        synchronized (TURN) {
            try {
                Files.createDirectories(AtomicFile.folder(AtomicFile.target(path)));
                try (FileChannel channel = lockFile();
                        FileLock lock = channel.lock()) {
                    return lock.isValid() ? keep(bytes, before) : failed(DrawerProblem.CHANGED_MEANWHILE);
                }
            } catch (IOException e) {
                return new Kept.Failed(Finding.of("", Problem.SAVE_FAILED, path.toString(), ScenarioFiles.reason(e)));
            }
        }
    }

    private FileChannel lockFile() throws IOException {
        return FileChannel.open(
                path.resolveSibling("." + path.getFileName() + ".lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
    }

    private Kept keep(byte[] bytes, Stamp before) throws IOException {
        Optional<byte[]> now = bytes();
        if (!before.is(now)) {
            return failed(DrawerProblem.CHANGED_MEANWHILE);
        }
        if (now.isPresent() && !Arrays.equals(now.get(), bytes)) {
            AtomicFile.write(copy(), now.get(), AtomicFile.ON_DISK);
        }
        return ScenarioFiles.save(path, bytes) instanceof Saved.Failed failed
                ? new Kept.Failed(failed.problem())
                : new Kept.Done(new Stamp(Optional.of(bytes)));
    }

    private Kept failed(DrawerProblem problem) {
        return new Kept.Failed(Finding.of("", problem, path.toString()));
    }
}
