package org.sagwise.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.quantity.Parsed.Detail;
import org.sagwise.quantity.Parsed.Reason;
import org.sagwise.quantity.Parsed.Refused;

/**
 * Reads quantities as people write them: {@code 0.3}, {@code 300 mΩ}, {@code 0.3 ohm}, {@code 0,30
 * Ω}, {@code 2.5 Ah}, {@code 1 h 12 min}, {@code 1:12:05}. Immutable.
 *
 * <p>Point and comma both stand before decimals, whatever the locale, so that a pasted value means
 * the same everywhere. Where the mark might as well stand between thousands ({@code 1,500} in
 * English), nothing is guessed: both readings are shown and one is asked for.
 *
 * @param locale whose thousands mark is watched for
 */
public record QuantityParser(Locale locale) {

    /** Longer texts are no quantity; keeps a pasted novel from being worked through. */
    private static final int LONGEST = 60;

    /** Reads a value; a bare number is in the unit itself. */
    public Parsed parse(String text, Unit unit) {
        return parse(text, Measure.of(unit));
    }

    /**
     * Reads a value.
     *
     * @param text what a person wrote
     * @param bare what is measured, and what a number without a unit is in
     * @return the value in the unit (not in its scale), or what is wrong with the text
     */
    public Parsed parse(String text, Measure bare) {
        String tidy = NumberReader.tidy(text);
        if (tidy.isEmpty()) {
            return refused(Reason.EMPTY, bare);
        }
        if (tidy.length() > LONGEST) {
            return refused(Reason.NOT_A_NUMBER, bare, tidy.substring(0, LONGEST) + "…");
        }
        if (bare.unit() != Unit.SECOND) {
            return single(tidy, bare);
        }
        return ClockTime.seconds(tidy)
                .<Parsed>map(seconds -> new Parsed.Value(seconds.doubleValue()))
                .orElseGet(() -> duration(tidy, bare));
    }

    private Parsed single(String text, Measure bare) {
        NumberReader.Result read = NumberReader.read(text, locale);
        if (read.problem().isPresent()) {
            return problem(read, text, bare);
        }
        Optional<Scale> scale = scale(read.rest(), bare);
        if (scale.isEmpty()) {
            return strangeUnit(read.rest(), bare);
        }
        double value = scale.get().toUnit(read.number());
        return Double.isFinite(value) ? new Parsed.Value(value + 0.0) : refused(Reason.TOO_LARGE, bare, text);
    }

    /** Sums {@code 1 h 12 min 5 s}: ever smaller units, one sign in front of it all. */
    private Parsed duration(String text, Measure bare) {
        String rest = hasSign(text) ? text.substring(1).strip() : text;
        BigDecimal total = BigDecimal.ZERO;
        BigDecimal previous = null;
        while (!rest.isEmpty()) {
            NumberReader.Result read = NumberReader.read(rest, locale);
            if (read.problem().isPresent()) {
                return problem(read, text, bare);
            }
            int end = endOfWord(read.rest());
            String symbol = read.rest().substring(0, end).strip();
            Optional<Scale> scale = scale(symbol, bare);
            if (scale.isEmpty()) {
                return strangeUnit(symbol, bare);
            }
            BigDecimal factor = scale.get().factor();
            boolean smaller = previous == null || factor.compareTo(previous) < 0;
            boolean named = previous == null || !symbol.isEmpty();
            if (!smaller || !named || hasSign(rest)) {
                return refused(Reason.MIXED_DURATION, bare, text);
            }
            total = total.add(read.number().multiply(factor));
            previous = factor;
            rest = read.rest().substring(end).strip();
        }
        double seconds = text.startsWith("-") ? -total.doubleValue() : total.doubleValue();
        return Double.isFinite(seconds) ? new Parsed.Value(seconds + 0.0) : refused(Reason.TOO_LARGE, bare, text);
    }

    private static boolean hasSign(String text) {
        return text.startsWith("-") || text.startsWith("+");
    }

    private static int endOfWord(String text) {
        int end = 0;
        while (end < text.length() && !Character.isDigit(text.charAt(end)) && !hasSign(text.substring(end))) {
            end++;
        }
        return end;
    }

    private static Optional<Scale> scale(String symbol, Measure bare) {
        return symbol.isEmpty() ? Optional.of(bare.scale()) : bare.unit().spelled(symbol);
    }

    private Parsed strangeUnit(String symbol, Measure bare) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.spelled(symbol).isPresent())
                .findFirst()
                .map(unit -> wrongUnit(symbol, unit, bare))
                .orElseGet(() -> refused(Reason.UNKNOWN_UNIT, bare, symbol));
    }

    private Parsed wrongUnit(String symbol, Unit found, Measure bare) {
        return new Refused(
                Reason.WRONG_UNIT,
                List.of(
                        Detail.word(symbol),
                        Detail.measured(found),
                        Detail.measured(bare.unit()),
                        Detail.word(Examples.of(bare, locale))));
    }

    private Parsed problem(NumberReader.Result read, String text, Measure bare) {
        return read.problem().orElseThrow() == Reason.AMBIGUOUS_NUMBER
                ? new Refused(
                        Reason.AMBIGUOUS_NUMBER,
                        read.readings().stream().map(Detail::word).toList())
                : refused(read.problem().get(), bare, text);
    }

    private Refused refused(Reason reason, Measure bare, String... words) {
        List<Detail> details = new ArrayList<>();
        for (String word : words) {
            details.add(Detail.word(word));
        }
        details.add(Detail.word(Examples.of(bare, locale)));
        return new Refused(reason, details);
    }
}
