package org.sagwise.file;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;
import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Files that are being written, before they get their name. Their own names say whose they are, so
 * that whoever writes into a folder next can take away what a writer left that was killed.
 */
final class Unfinished {

    private static final String BEGIN = ".sagwise-";
    private static final String END = ".tmp";

    /** Number of the process, then one for each file; without the name of what is written, which may be long. */
    private static final Pattern NAME =
            Pattern.compile(Pattern.quote(BEGIN) + "([0-9]{1,18})-[0-9]{1,4}" + Pattern.quote(END));

    private static final int MOST_NAMES = 1_000;

    private Unfinished() {}

    /** A new empty file in a folder, which is tidied first. */
    static Path create(Path folder) throws IOException {
        sweep(folder);
        String name = BEGIN + ProcessHandle.current().pid() + "-";
        for (int i = 0; i < MOST_NAMES; i++) {
            Path fresh = folder.resolve(name + i + END);
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
        throw new FileAlreadyExistsException(folder.resolve(name).toString());
    }

    /** Shows other machines and containers, which do not see this process, that the file is in use. */
    static void claim(FileChannel file) {
        try {
            file.tryLock();
        } catch (IOException noLocks) {
            // Where files cannot be locked, nobody sweeps either.
            return;
        }
    }

    private static void sweep(Path folder) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, Unfinished::isOfTheDead)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | DirectoryIteratorException notOurs) {
            // Only tidiness: whoever may not list the folder can write to it all the same.
            return;
        }
    }

    private static boolean isOfTheDead(Path file) {
        Matcher ours = NAME.matcher(file.getFileName().toString());
        return ours.matches()
                && Files.isRegularFile(file, NOFOLLOW_LINKS)
                && !Writer.mayLive(Long.parseLong(ours.group(1)), file)
                && isFree(file);
    }

    /** Whether nobody holds it, on this machine or on another one that shares the folder. */
    private static boolean isFree(Path file) {
        try (FileChannel channel = FileChannel.open(file, WRITE, NOFOLLOW_LINKS);
                FileLock lock = channel.tryLock()) {
            return lock != null;
        } catch (IOException notOurs) {
            return false;
        }
    }
}
