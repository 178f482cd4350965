package org.sagwise.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFinding;

/**
 * What came of reading a lesson.
 *
 * @param id its name
 * @param lesson the lesson; empty if anything is wrong with its file
 * @param faults everything that is wrong, from the top of the file down
 * @param positions where each place of the file stands
 * @param stepIds the names of its steps in order, also of a file that is no lesson; empty words for
 *     steps without one
 */
public record LessonReading(
        String id,
        Optional<Lesson> lesson,
        List<LessonFault> faults,
        Map<String, Position> positions,
        List<String> stepIds) {

    public LessonReading {
        faults = faults.stream().sorted(LessonFault.READING_ORDER).toList();
        positions = Map.copyOf(positions);
        stepIds = List.copyOf(stepIds);
    }

    /** The lesson that could not be read because of this. */
    static LessonReading refused(String id, List<LessonFault> faults) {
        return new LessonReading(id, Optional.empty(), faults, Map.of(), List.of());
    }

    /** Finds out where in the file something was found: at its place or what it lies in. */
    public LessonFault locate(LessonFinding finding) {
        String place = finding.place();
        while (!place.isEmpty() && !positions.containsKey(place)) {
            int end = Math.max(place.lastIndexOf('.'), place.lastIndexOf('['));
            place = place.substring(0, Math.max(end, 0));
        }
        return new LessonFault(finding, Optional.ofNullable(positions.get(place)));
    }
}
