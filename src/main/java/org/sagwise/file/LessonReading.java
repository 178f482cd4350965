package org.sagwise.file;

import java.util.List;
import java.util.Optional;
import org.sagwise.lesson.Lesson;
import org.sagwise.scenario.Finding;

/**
 * What came of reading a lesson.
 *
 * @param id its name
 * @param lesson the lesson; empty if anything is wrong with its file
 * @param faults everything that is wrong, from the top of the file down
 * @param document the text of its file, in which findings are located
 * @param stepIds the names of its steps in order, also of a file that is no lesson; empty words for
 *     steps without one
 */
public record LessonReading(
        String id, Optional<Lesson> lesson, List<Finding> faults, Document document, List<String> stepIds) {

    public LessonReading {
        faults = faults.stream().sorted(Finding.READING_ORDER).toList();
        stepIds = List.copyOf(stepIds);
    }

    /** The lesson that could not be read because of this. */
    static LessonReading refused(String id, List<Finding> faults) {
        return new LessonReading(id, Optional.empty(), faults, new Document(Optional.empty(), List.of()), List.of());
    }

    /** Finds out where in the file something was found: at its place or what it lies in. */
    public Finding locate(Finding finding) {
        return document.locate(finding);
    }
}
