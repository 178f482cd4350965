package org.sagwise.ui.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.file.LessonProgress;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Recall;
import org.sagwise.lesson.RecallRound;

/**
 * How far each lesson is, kept on this machine alone until it is wiped. Trouble with the file goes
 * to the log: nobody wants to be stopped in a lesson because of it.
 */
public final class ProgressBook {

    private static final Logger LOG = Logger.getLogger(ProgressBook.class.getName());

    /** Name of the file in the folder of settings. */
    static final String FILE = "lessons.json";

    private final Path file;
    private final ReadOnlyObjectWrapper<LessonProgress> progress;

    /**
     * @param folder where the file is; need not exist
     */
    public ProgressBook(Path folder) {
        file = folder.resolve(FILE);
        progress = new ReadOnlyObjectWrapper<>(LessonProgress.read(file));
    }

    public ReadOnlyObjectProperty<LessonProgress> property() {
        return progress.getReadOnlyProperty();
    }

    /** How far a lesson is. */
    public LessonStatus standing(Lesson lesson) {
        return LessonStatus.of(lesson, progress.get().place(lesson.id()));
    }

    Optional<LessonProgress.Place> place(Lesson lesson) {
        return progress.get().place(lesson.id());
    }

    /** The questions of earlier lessons that come back when this one begins. */
    List<Recall.Item> recalls(List<Lesson> taught, Lesson next) {
        LessonProgress now = progress.get();
        return Recall.choose(taught, now.given(), now.recalled(), next);
    }

    /** Keeps what was answered to a question that came back. */
    void keep(RecallRound answered, List<Lesson> taught, Lesson next) {
        LessonProgress now = progress.get();
        LessonProgress then =
                now.recalling(answered.noted(now.recalled(), Recall.lessonsGone(taught, now.given(), next)));
        progress.set(then);
        write(then);
    }

    /** Answers to a form of the check of ideas; empty if it was not taken. */
    List<Integer> check(IdeasCheck.Form form) {
        return progress.get().checks().getOrDefault(form.name(), List.of());
    }

    /** Keeps the answers to a form of the check of ideas. */
    void keep(IdeasCheck.Form form, List<Integer> answers) {
        LessonProgress then = progress.get().checking(form.name(), answers);
        progress.set(then);
        write(then);
    }

    /** Keeps how far somebody is; nothing is written where that changes nothing. */
    void keep(LessonPlayer player) {
        LessonProgress next = progress.get().with(player);
        if (!next.equals(progress.get())) {
            progress.set(next);
            write(next);
        }
    }

    /** Forgets everything. */
    public void wipe() {
        progress.set(LessonProgress.NONE);
        try {
            LessonProgress.wipe(file);
        } catch (IOException failure) {
            LOG.log(Level.WARNING, "the progress in lessons cannot be deleted", failure);
        }
    }

    private void write(LessonProgress next) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            next.write(file);
        } catch (IOException failure) {
            LOG.log(Level.WARNING, "the progress in lessons cannot be kept", failure);
        }
    }
}
