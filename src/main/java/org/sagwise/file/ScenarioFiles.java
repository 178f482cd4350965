package org.sagwise.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

/** Saves scenarios so that no failure, at whatever moment, leaves half a file. */
public final class ScenarioFiles {

    private ScenarioFiles() {}

    /**
     * Saves a scenario: into a new file beside the old one, forced to the disk, then put in its
     * place in one step. Follows symbolic links and keeps the permissions of the old file.
     */
    public static Saved save(Path path, Scenario scenario) {
        return save(path, ScenarioWriter.write(scenario), AtomicFile.ON_DISK);
    }

    /** Saves something else in the same way, such as a picture or a post. */
    public static Saved save(Path path, byte[] bytes) {
        return save(path, bytes, AtomicFile.ON_DISK);
    }

    static Saved save(Path path, String text, AtomicFile.Sink sink) {
        return save(path, text.getBytes(StandardCharsets.UTF_8), sink);
    }

    private static Saved save(Path path, byte[] bytes, AtomicFile.Sink sink) {
        try {
            Path target = AtomicFile.target(path);
            if (Files.isDirectory(target)) {
                return failed(Problem.FILE_IS_FOLDER, target);
            } else if (AtomicFile.isNoFile(target)) {
                return failed(Problem.FILE_IS_NO_FILE, target);
            } else if (!Files.isDirectory(AtomicFile.folder(target))) {
                return failed(Problem.FOLDER_MISSING, AtomicFile.folder(target));
            } else if (AtomicFile.isWriteProtected(target)) {
                return failed(Problem.FILE_UNWRITABLE, target);
            }
            AtomicFile.write(target, bytes, sink);
            return new Saved.Done(target);
        } catch (AccessDeniedException e) {
            return failed(Problem.FOLDER_UNWRITABLE, AtomicFile.folder(path));
        } catch (IOException e) {
            return isForWantOfRoom(e)
                    ? failed(Problem.DISK_FULL, path)
                    : new Saved.Failed(Finding.of("", Problem.SAVE_FAILED, path.toString(), reason(e)));
        }
    }

    private static Saved failed(Problem problem, Path path) {
        return new Saved.Failed(Finding.of("", problem, path.toString()));
    }

    /** The JDK tells a full disk from other trouble only by the system's words. */
    private static boolean isForWantOfRoom(IOException e) {
        String words = reason(e).toLowerCase(Locale.ROOT);
        return words.contains("no space left") || words.contains("not enough space") || words.contains("quota");
    }

    static String reason(IOException e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
