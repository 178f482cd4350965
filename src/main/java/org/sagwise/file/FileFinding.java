package org.sagwise.file;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.text.Texts;

/**
 * Something wrong with a file, and where a person finds it there.
 *
 * @param finding what is wrong
 * @param position where in the text; empty where the whole file is meant
 */
public record FileFinding(Finding finding, Optional<Position> position) {

    /** From the top of the file down; what concerns the whole file comes first. */
    static final Comparator<FileFinding> READING_ORDER =
            Comparator.comparing(found -> found.position().orElse(new Position(0, 0)), Comparator.naturalOrder());

    static FileFinding ofWhole(Problem problem, String... details) {
        return new FileFinding(Finding.of("", problem, details), Optional.empty());
    }

    /** One line for people: place, line and column, what is wrong and what would be right. */
    public String text(Locale locale) {
        Texts texts = Texts.in("problems", locale);
        String sentence = ProblemTexts.sentence(finding, locale);
        if (position.isEmpty()) {
            return sentence;
        }
        int line = position.get().line();
        int column = position.get().column();
        return finding.place().isEmpty()
                ? texts.say("at-position", str(line), str(column), sentence)
                : texts.say("at-place", ProblemTexts.shown(finding.place()), str(line), str(column), sentence);
    }

    /** Numbers of lines are no quantities: no thousands mark. */
    private static String str(int number) {
        return String.valueOf(number);
    }
}
