package org.sagwise.lesson;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.scenario.Finding;

/** What lint has found so far, and how it asks the engine. */
final class LintReport {

    /** Finer than any {@code within} an author would write. */
    private static final int DIGITS = 5;

    private final List<Finding> findings = new ArrayList<>();

    List<Finding> findings() {
        return findings;
    }

    void add(String place, LessonProblem problem, String... details) {
        findings.add(Finding.of(place, problem, details));
    }

    void addAll(List<Finding> more) {
        findings.addAll(more);
    }

    /** A reading; where there is none, that is found. */
    OptionalDouble tell(String place, ReadingRef ref, Situation situation) {
        OptionalDouble value = situation.read(ref);
        if (value.isEmpty()) {
            Optional<String> meant = Meant.reading(ref, situation);
            meant.ifPresentOrElse(
                    near -> add(place, LessonProblem.READING_MISSPELT, ref.toString(), near),
                    () -> add(place, LessonProblem.READING_EMPTY, ref.toString()));
        }
        return value;
    }

    /** A number as an author would copy it into the lesson. */
    static String rounded(double value) {
        return new BigDecimal(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }
}
