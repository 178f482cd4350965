package org.sagwise.ui.lesson.author;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.sagwise.file.CheckedLesson;
import org.sagwise.file.LessonFolder;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonSource;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.part.Catalogue;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.LessonShelf;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Shown;

/**
 * A folder of lessons of one's own: opened beside those that come with the program, and watched
 * while somebody writes in it. Lessons are read and tried out behind the scenes.
 */
public final class AuthorController implements AutoCloseable {

    private final Catalogue catalogue;
    private final LessonShelf shelf;
    private final LessonSession room;
    private final PreferencesModel preferences;
    private final ScheduledExecutorService behind;
    private final Consumer<Path> editor;
    private final LatestTask latest;
    private final ReadOnlyObjectWrapper<Optional<Path>> folder = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<OwnLesson>> lessons = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Boolean> gone = new ReadOnlyObjectWrapper<>(false);
    private Optional<FolderWatch> watch = Optional.empty();

    /**
     * @param behind where lessons are read; one thing after the other
     * @param editor opens a file in the program that the system has for it
     */
    public AuthorController(
            Catalogue catalogue,
            LessonShelf shelf,
            LessonSession room,
            PreferencesModel preferences,
            ScheduledExecutorService behind,
            Consumer<Path> editor) {
        this.catalogue = catalogue;
        this.shelf = shelf;
        this.room = room;
        this.preferences = preferences;
        this.behind = behind;
        this.editor = editor;
        latest = LatestTask.in(behind);
        authoring().subscribe(on -> watchOrNot());
    }

    /** The folder that is open. */
    public ReadOnlyObjectProperty<Optional<Path>> folderProperty() {
        return folder.getReadOnlyProperty();
    }

    /** Its lessons, with all that is to be mended in them. */
    ReadOnlyObjectProperty<List<OwnLesson>> lessonsProperty() {
        return lessons.getReadOnlyProperty();
    }

    /** Whether the folder is not there any more. */
    ReadOnlyObjectProperty<Boolean> goneProperty() {
        return gone.getReadOnlyProperty();
    }

    /** Whether one writes, and sees what is to be mended; else one teaches. */
    public ObservableValue<Boolean> authoring() {
        return preferences.property().map(now -> now.authoring() == Shown.SHOWN);
    }

    public void toggleAuthoring() {
        preferences.change(now -> now.withAuthoring(now.authoring() == Shown.SHOWN ? Shown.HIDDEN : Shown.SHOWN));
    }

    /** Opens the folder that was open when the program was left. */
    public void openLast() {
        preferences.get().lessonFolder().ifPresent(last -> open(last, () -> {}));
    }

    /**
     * Opens a folder with a lesson, or with several in folders of their own.
     *
     * @param nothing told if there is none; what was open stays
     */
    public void open(Path chosen, Runnable nothing) {
        Path whole = chosen.toAbsolutePath().normalize();
        latest.ask(() -> read(whole), found -> {
            if (found.isEmpty()) {
                nothing.run();
            } else {
                opened(whole, found);
            }
        });
    }

    private void opened(Path whole, List<OwnLesson> found) {
        folder.set(Optional.of(whole));
        lessons.set(List.of());
        preferences.change(now -> now.withLessonFolder(Optional.of(whole)));
        take(found);
        watchOrNot();
    }

    /** Puts the folder away; the lesson that runs is left. */
    public void putAway() {
        boolean runs = running().isPresent();
        folder.set(Optional.empty());
        take(List.of());
        gone.set(false);
        preferences.change(now -> now.withLessonFolder(Optional.empty()));
        watchOrNot();
        if (runs) {
            room.leave();
        }
    }

    /** Reads the folder once more. */
    public void readAgain() {
        folder.get()
                .ifPresent(path -> latest.ask(() -> read(path), found -> {
                    gone.set(found.isEmpty());
                    if (!found.isEmpty()) {
                        take(found);
                    }
                }));
    }

    /** The lesson of one's own that runs. */
    Optional<OwnLesson> running() {
        Optional<String> id = room.player().map(LessonPlayer::lesson).map(it -> it.id());
        return lessons.get().stream()
                .filter(it -> id.equals(Optional.of(it.id())))
                .findFirst();
    }

    /** Opens the file of a lesson where the system opens such files. */
    void edit(OwnLesson lesson) {
        editor.accept(lesson.file());
    }

    /** Goes to a step of a lesson, beginning the lesson if it does not run. */
    void show(OwnLesson own, Optional<String> step) {
        own.lesson().ifPresent(lesson -> {
            if (running().filter(it -> it.id().equals(own.id())).isEmpty()) {
                room.start(lesson);
            }
            int place = lesson.steps().stream().map(it -> it.id()).toList().indexOf(step.orElse(""));
            if (place >= 0) {
                room.jump(place);
            }
        });
    }

    private List<OwnLesson> read(Path whole) {
        try {
            List<Path> folders = LessonFolder.lessons(whole);
            List<CheckedLesson> checked = CheckedLesson.all(
                    folders.stream().map(LessonSource::ofFolder).toList(), catalogue, LessonLibrary.ids());
            List<OwnLesson> found = new ArrayList<>();
            for (int i = 0; i < folders.size(); i++) {
                found.add(OwnLesson.of(folders.get(i), checked.get(i), List.of()));
            }
            return found;
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private void take(List<OwnLesson> found) {
        List<OwnLesson> before = lessons.get();
        lessons.set(found.stream()
                .map(it -> OwnLesson.of(it.folder(), it.checked(), before))
                .toList());
        shelf.putOwn(lessons.get().stream().flatMap(it -> it.lesson().stream()).toList());
        running().filter(it -> !it.isBehind()).flatMap(OwnLesson::lesson).ifPresent(room::reload);
    }

    private void watchOrNot() {
        boolean wanted = preferences.get().authoring() == Shown.SHOWN;
        watch.ifPresent(FolderWatch::close);
        watch = folder.get()
                .filter(path -> wanted)
                .map(path -> FolderWatch.start(path, () -> Platform.runLater(this::readAgain), behind));
        if (wanted) {
            readAgain();
        }
    }

    /** Folders opened before, the latest first. */
    public ObservableValue<List<Path>> recent() {
        return preferences.property().map(Preferences::recentLessons);
    }

    @Override
    public void close() {
        watch.ifPresent(FolderWatch::close);
    }
}
