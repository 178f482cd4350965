package org.sagwise.scenario;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.text.Position;
import org.sagwise.text.Texts;

/**
 * One thing that is wrong with a document, be it scenario or lesson, and where it is found.
 *
 * @param place where, as a path such as {@code parts[2].internal_mohm}; empty for the whole document
 * @param position where in the text of its file; empty where the whole file is meant, or there is none
 * @param problem what
 * @param details what fills the blanks of the problem's text, in order
 */
public record Finding(String place, Optional<Position> position, Fault problem, List<String> details) {

    /** From the top of the file down; what concerns the whole file comes first. */
    public static final Comparator<Finding> READING_ORDER =
            Comparator.comparing(found -> found.position().orElse(new Position(0, 0)), Comparator.naturalOrder());

    public Finding {
        details = List.copyOf(details);
    }

    public static Finding of(String place, Fault problem, String... details) {
        return new Finding(place, Optional.empty(), problem, List.of(details));
    }

    /** The same at a position of the file. */
    public Finding at(Optional<Position> there) {
        return new Finding(place, there, problem, details);
    }

    /** What is wrong and what would be right, without the place. */
    public String sentence(Locale locale) {
        return problem.sentence(place, details, locale);
    }

    /** One line for people: place, line and column, what is wrong and what would be right. */
    public String text(Locale locale) {
        if (position.isEmpty()) {
            return sentence(locale);
        }
        // Numbers of lines are no quantities: no thousands mark.
        String line = String.valueOf(position.get().line());
        String column = String.valueOf(position.get().column());
        String key = place.isEmpty() ? "at-position" : "at-place";
        return Texts.in("problems", locale).say(key, line, column, sentence(locale), ProblemTexts.shown(place));
    }
}
