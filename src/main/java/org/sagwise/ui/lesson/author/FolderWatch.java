package org.sagwise.ui.lesson.author;

import java.nio.file.Path;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.sagwise.file.LessonFolder;

/**
 * Tells when a folder of lessons has been saved in. It looks from time to time, which works on
 * every file system and however an editor writes; it tells once the files have come to rest, so
 * that nothing half written is read.
 */
final class FolderWatch implements AutoCloseable {

    private static final long EVERY_MS = 250;

    private final Path folder;
    private final Runnable saved;
    private ScheduledFuture<?> beat;
    private String told;
    private String last;

    /**
     * @param behind where it looks, and from where it tells
     */
    static FolderWatch start(Path folder, Runnable saved, ScheduledExecutorService behind) {
        FolderWatch watch = new FolderWatch(folder, saved);
        watch.beat = behind.scheduleWithFixedDelay(watch::look, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
        return watch;
    }

    FolderWatch(Path folder, Runnable saved) {
        this.folder = folder;
        this.saved = saved;
        this.told = LessonFolder.stamp(folder);
        this.last = told;
    }

    /** Looks once. */
    void look() {
        String now = LessonFolder.stamp(folder);
        if (now.equals(last) && !now.equals(told)) {
            told = now;
            saved.run();
        }
        last = now;
    }

    @Override
    public void close() {
        beat.cancel(false);
    }
}
