package org.sagwise.ui.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.Writer;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.History;

/**
 * Keeps what is not saved yet in a file of its own, edit by edit, so that it is there again after
 * the program was killed. Every running program has its own file, named by its process.
 */
public final class Recovery implements AutoCloseable {

    private static final Pattern NAME = Pattern.compile("unsaved-(\\d{1,18})" + Pattern.quote(Documents.ENDING));

    /** How long closing waits for the last writing, in seconds. */
    private static final long PATIENCE_S = 5;

    private final Path folder;
    private final Path own;
    private final ExecutorService writer;
    private final AtomicReference<Optional<Scenario>> latest = new AtomicReference<>(Optional.empty());

    /**
     * @param folder where the files are kept
     */
    public Recovery(Path folder) {
        this.folder = folder;
        this.own = folder.resolve("unsaved-" + ProcessHandle.current().pid() + Documents.ENDING);
        this.writer = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "keeps what is not saved");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Keeps whatever comes to this bench from now on, as long as it is in no file. */
    public void follow(BenchModel bench) {
        bench.historyProperty().subscribe((before, now) -> keep(now));
    }

    private void keep(History now) {
        latest.set(now.isSaved() ? Optional.empty() : Optional.of(now.present()));
        if (!writer.isShutdown()) {
            writer.execute(this::write);
        }
    }

    /** Writes the latest state; when edits come fast, those between are passed over. */
    private void write() {
        Optional<Scenario> state = latest.get();
        if (state.isEmpty()) {
            delete(own);
        } else if (prepare()) {
            ScenarioFiles.save(own, state.get());
        }
    }

    private boolean prepare() {
        try {
            Files.createDirectories(folder);
            return true;
        } catch (IOException noFolder) {
            // Without a place to keep it, the person still has the bench and can save it.
            return false;
        }
    }

    /** Files left behind by programs that run no more. */
    public List<Path> left() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Recovery::isLeft).sorted().toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static boolean isLeft(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        return name.matches() && !Writer.mayLive(Long.parseLong(name.group(1)), file);
    }

    /** What a file that was left behind holds; empty if it cannot be read. */
    public Optional<Scenario> read(Path file, ScenarioReader reader) {
        return reader.read(file).scenario();
    }

    /** Forgets a file that was left behind, once everything that came before is written. */
    public void forget(Path file) {
        writer.execute(() -> delete(file));
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            // It will be offered again at the next start, which loses nothing.
        }
    }

    /** Waits for what is being written and takes the own file away: this is an orderly end. */
    @Override
    public void close() {
        writer.shutdown();
        try {
            if (writer.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
                delete(own);
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
