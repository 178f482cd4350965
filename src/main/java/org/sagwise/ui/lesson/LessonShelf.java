package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.Lesson;

/**
 * The lessons that come with the program, read while the window opens, and those of one's own
 * beside them.
 */
public final class LessonShelf {

    private final ReadOnlyObjectWrapper<List<Lesson>> lessons = new ReadOnlyObjectWrapper<>(List.of());

    private final ReadOnlyObjectWrapper<List<Lesson>> own = new ReadOnlyObjectWrapper<>(List.of());

    /**
     * @param behindTheScenes where reading is done
     * @param onStage where the window is told
     */
    public LessonShelf(LessonReader reader, Executor behindTheScenes, Executor onStage) {
        behindTheScenes.execute(() -> {
            List<Lesson> read = LessonLibrary.ids().stream()
                    .map(id -> reader.read(LessonLibrary.source(id)))
                    .flatMap(reading -> reading.lesson().stream())
                    .toList();
            onStage.execute(() -> lessons.set(read));
        });
    }

    /** The lesson that is taught after this one. */
    public Optional<Lesson> after(Lesson lesson) {
        return after(lesson, lessons.get()).or(() -> after(lesson, own.get()));
    }

    private static Optional<Lesson> after(Lesson lesson, List<Lesson> all) {
        int at = all.stream().map(Lesson::id).toList().indexOf(lesson.id());
        return at >= 0 && at + 1 < all.size() ? Optional.of(all.get(at + 1)) : Optional.empty();
    }

    /** Lessons of one's own, in the order of their folders. */
    public ReadOnlyObjectProperty<List<Lesson>> ownProperty() {
        return own.getReadOnlyProperty();
    }

    /** Puts lessons of one's own beside the others. */
    public void putOwn(List<Lesson> found) {
        own.set(List.copyOf(found));
    }

    /** The lessons of the program, and those of one's own. */
    public List<Lesson> all() {
        return Stream.concat(lessons.get().stream(), own.get().stream()).toList();
    }

    /** All lessons in the order in which they are taught; empty until they have been read. */
    public ReadOnlyObjectProperty<List<Lesson>> lessonsProperty() {
        return lessons.getReadOnlyProperty();
    }
}
