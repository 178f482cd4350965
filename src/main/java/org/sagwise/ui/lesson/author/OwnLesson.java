package org.sagwise.ui.lesson.author;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.CheckedLesson;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.Lesson;

/**
 * A lesson of one's own as it is in its folder.
 *
 * @param folder where it is
 * @param checked what came of reading and trying it
 * @param lesson the lesson to play: as it is, or as it was when it could last be read
 */
record OwnLesson(Path folder, CheckedLesson checked, Optional<Lesson> lesson) {

    /** Keeps lessons of one's own apart from those that come with the program. */
    private static final String OWN = "own-";

    /** What it has become, after what it was. */
    static OwnLesson of(Path folder, CheckedLesson checked, List<OwnLesson> before) {
        Optional<Lesson> good = checked.lesson()
                .map(it -> it.withId(OWN + it.id()))
                .or(() -> before.stream()
                        .filter(it -> it.folder.equals(folder))
                        .findFirst()
                        .flatMap(OwnLesson::lesson));
        return new OwnLesson(folder, checked, good);
    }

    /** The name under which the window knows it. */
    String id() {
        return OWN + checked.id();
    }

    /** Whether the file can no longer be read, and what is shown is older. */
    boolean isBehind() {
        return checked.lesson().isEmpty();
    }

    Path file() {
        return folder.resolve(LessonReader.FILE);
    }
}
