package org.sagwise.ui.share;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.compare.ComparisonPost;
import org.sagwise.report.post.Block;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/**
 * Two benches and what differs between them.
 *
 * @param first the bench
 * @param second what it is compared with; empty if there is nothing
 * @param isCure whether the second is the first, corrected
 * @param words what differs
 */
record Sides(Assessment first, Optional<Assessment> second, boolean isCure, List<Block> words) {

    Sides {
        words = List.copyOf(words);
    }

    /** Works it out; runs both down, so it may take a while. */
    static Sides of(Scenario bench, Other other, Function<Scenario, Assessment> assess, Locale locale) {
        Assessment first = assess.apply(bench);
        Optional<Assessment> second =
                other.known().map(assess).or(() -> Cure.of(first).map(Cure::after));
        return new Sides(
                first,
                second,
                other.known().isEmpty(),
                second.map(it -> Comparison.of(first, it))
                        .map(it -> ComparisonPost.of(it, locale, Signs.PRINT))
                        .orElse(List.of()));
    }
}
