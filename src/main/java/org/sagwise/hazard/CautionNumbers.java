package org.sagwise.hazard;

import java.util.Optional;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * The number of a caution and what it is held against, printed; each says itself where it rests on this program's choice
 * or on memory.
 *
 * @param measured the number with its unit
 * @param limit its limit with its unit; empty where it is held against none
 */
public record CautionNumbers(String measured, Optional<String> limit) {

    /** A number that is this small a share of its limit is not what the caution is about. */
    private static final double NEXT_TO_NOTHING = 0.005;

    /** No digits that nobody set. */
    private static final Digits LIMIT = Digits.atMostSignificant(3);

    /** Empty for a caution that is about no number. */
    public static Optional<CautionNumbers> of(Caution caution, QuantityFormat format) {
        boolean nothing = Math.abs(caution.measured()) < NEXT_TO_NOTHING * Math.abs(caution.limit());
        if (Double.isNaN(caution.measured()) || nothing) {
            return Optional.empty();
        }
        Unit unit = Unit.ofSymbol(caution.unit()).orElse(Unit.FRACTION);
        Texts texts = Texts.in("cautions", format.locale());
        String measured = format.print(caution.measured(), unit);
        Optional<String> limit = Double.isNaN(caution.limit())
                ? Optional.empty()
                : Optional.of(format.print(caution.limit(), unit.base(), LIMIT))
                        .map(number -> texts.say("basis." + Hazards.limitBasis(caution), number));
        return Optional.of(
                new CautionNumbers(caution.isOfAMoment() ? texts.say("basis.moment", measured) : measured, limit));
    }
}
