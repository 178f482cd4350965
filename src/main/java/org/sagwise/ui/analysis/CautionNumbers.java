package org.sagwise.ui.analysis;

import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.hazard.Caution;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.text.Wording;

/** The number of a caution against its limit, as one line. */
final class CautionNumbers {

    private CautionNumbers() {}

    /** A number that is this small a share of its limit is not what the caution is about. */
    private static final double NEXT_TO_NOTHING = 0.005;

    /** Empty for a caution that is about no number. */
    static Optional<String> of(Caution caution, Wording wording) {
        boolean nothing = Math.abs(caution.measured()) < NEXT_TO_NOTHING * Math.abs(caution.limit());
        if (Double.isNaN(caution.measured()) || nothing) {
            return Optional.empty();
        }
        String measured = print(caution.measured(), caution.unit(), wording);
        return Optional.of(
                Double.isNaN(caution.limit())
                        ? measured
                        : wording.say("caution.against", measured, limit(caution.limit(), caution.unit(), wording)));
    }

    private static String print(double value, String symbol, Wording wording) {
        return unit(symbol)
                .map(unit -> wording.quantity(value, unit))
                .orElseGet(() -> (wording.inColumn(value, value) + " " + symbol).strip());
    }

    private static String limit(double value, String symbol, Wording wording) {
        return unit(symbol).map(unit -> wording.limit(value, unit)).orElseGet(() -> print(value, symbol, wording));
    }

    private static Optional<Unit> unit(String symbol) {
        return Stream.of(Unit.values())
                .filter(unit -> !symbol.isEmpty() && unit.base().symbol().equals(symbol))
                .findFirst();
    }
}
