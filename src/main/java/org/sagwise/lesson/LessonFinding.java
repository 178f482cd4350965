package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import org.sagwise.text.Texts;

/**
 * Something wrong with a lesson.
 *
 * @param place where, as in {@code steps[2].until[0]}; empty for the whole lesson
 * @param problem what
 * @param details what fills the blanks of its sentence
 */
public record LessonFinding(String place, LessonProblem problem, List<String> details) {

    public LessonFinding {
        details = List.copyOf(details);
    }

    public static LessonFinding of(String place, LessonProblem problem, String... details) {
        return new LessonFinding(place, problem, List.of(details));
    }

    /** What is wrong and what would be right, without the place. */
    public String sentence(Locale locale) {
        return Texts.in("lesson-problems", locale).say(problem.key(), details.toArray());
    }
}
