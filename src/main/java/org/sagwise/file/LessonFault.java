package org.sagwise.file;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.lesson.LessonFinding;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.text.Texts;

/**
 * Something wrong with a lesson, and where a person finds it in the file.
 *
 * @param finding what is wrong
 * @param position where in the text; empty where the whole lesson is meant
 */
public record LessonFault(LessonFinding finding, Optional<Position> position) {

    /** From the top of the file down; what concerns the whole file comes first. */
    static final Comparator<LessonFault> READING_ORDER =
            Comparator.comparing(fault -> fault.position().orElse(new Position(0, 0)), Comparator.naturalOrder());

    static LessonFault ofWhole(LessonProblem problem, String... details) {
        return new LessonFault(LessonFinding.of("", problem, details), Optional.empty());
    }

    /** One line for people: line and column, place, what is wrong and what would be right. */
    public String text(Locale locale) {
        String sentence = finding.sentence(locale);
        if (position.isEmpty()) {
            return sentence;
        }
        return Texts.in("lesson-problems", locale)
                .say(
                        finding.place().isEmpty() ? "at-position" : "at-place",
                        String.valueOf(position.get().line()),
                        String.valueOf(position.get().column()),
                        sentence,
                        finding.place());
    }
}
