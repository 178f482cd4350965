package org.sagwise.reading;

import java.util.List;
import java.util.function.Predicate;

/**
 * The current through the coils as one number: the common one of coils in series, the sum of coils
 * side by side.
 *
 * <p>Found on the staircase: whatever falls through the coils past one height. Coils side by side
 * pass the same heights, so their currents add; coils in series pass one below the other, so each
 * height meets one of them.
 */
final class LoadCurrent {

    private LoadCurrent() {}

    /** The largest sum of currents that fall through loads past one height, A; 0 without any. */
    static double of(List<PartReading> parts, Heights heights, Predicate<PartReading> isLoad) {
        List<Span> spans = parts.stream()
                .filter(isLoad)
                .filter(part -> part.currentA() != 0)
                .map(part -> Span.of(part, heights))
                .toList();
        return spans.stream()
                .mapToDouble(Span::middleV)
                .map(heightV -> spans.stream()
                        .filter(span -> span.passes(heightV))
                        .mapToDouble(Span::currentA)
                        .sum())
                .max()
                .orElse(0);
    }

    /** Potential of the first terminal of a part, V. */
    interface Heights {
        double firstV(String part);
    }

    private record Span(double lowV, double highV, double currentA) {

        static Span of(PartReading part, Heights heights) {
            double first = heights.firstV(part.id());
            double second = first - part.voltsV();
            return new Span(Math.min(first, second), Math.max(first, second), Math.abs(part.currentA()));
        }

        double middleV() {
            return (lowV + highV) / 2;
        }

        boolean passes(double heightV) {
            return lowV < heightV && heightV < highV;
        }
    }
}
