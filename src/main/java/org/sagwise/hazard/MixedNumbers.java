package org.sagwise.hazard;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.sagwise.reading.ResolvedCell;

/**
 * Cells of one pack that differ too much in a number.
 *
 * @param unit what the names of the details end in: {@code lowAh}, {@code highAh}
 * @param number the number
 * @param tooFar whether the least and the most are too far apart
 */
record MixedNumbers(String unit, ToDoubleFunction<ResolvedCell> number, Predicate<Spread> tooFar)
        implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.teams().stream()
                .map(cells -> Spread.of(
                        cells,
                        cell -> number.applyAsDouble(context.bench().cells().get(cell))))
                .filter(tooFar)
                .map(spread -> spread.caution(context, Signal.CAUTION)
                        .detail("low" + unit, spread.lowest())
                        .detail("high" + unit, spread.highest()))
                .toList();
    }
}
