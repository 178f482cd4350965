package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class QuantityProperties {

    @Property
    void parse_printedWithAllDigits_isTheSameValue(
            @ForAll Unit unit, @ForAll("anyMagnitude") double value, @ForAll("locales") Locale locale) {
        for (Scale scale : unit.scales()) {
            String text = QuantityFormat.forPeople(locale).print(value, scale, Digits.all());
            double back = new QuantityParser(locale).parse(text, unit).value().orElseThrow();
            double offset = scale.offset().abs().doubleValue();
            double ulps = 2 * Math.ulp(Math.abs(value) + offset);
            assertEquals(value, back, ulps, text);
        }
    }

    @Property
    void parse_housePrinted_isWithinItsDigits(
            @ForAll Unit unit, @ForAll("everyday") double value, @ForAll("locales") Locale locale) {
        String text = QuantityFormat.forPeople(locale).print(value, unit);
        double back = new QuantityParser(locale).parse(text, unit).value().orElseThrow();
        // Coarsest rounding of the house style: a whole degree, half a minute of hours, 0.5 %.
        double tolerance = switch (unit) {
            case CELSIUS -> 0.5;
            case FRACTION -> Math.max(0.0006, Math.abs(value) * 0.051);
            case SECOND -> Math.max(0.05, Math.abs(value) * 0.0084);
            default -> Math.abs(value) * 0.051 + 1e-9;
        };
        assertEquals(value, back, tolerance, text);
    }

    @Property
    void print_asciiFormat_isAscii(@ForAll Unit unit, @ForAll("anyMagnitude") double value) {
        String text = QuantityFormat.ascii().print(value, unit);
        assertTrue(text.chars().allMatch(c -> c >= ' ' && c <= '~'), text);
    }

    @Property
    void print_anyValue_neverShowsNegativeZero(@ForAll Unit unit, @ForAll("tiny") double value) {
        String text = QuantityFormat.forPeople(Locale.ENGLISH).print(value, unit);
        assertTrue(!text.startsWith("−") || text.matches("−.*[1-9].*"), text);
    }

    @Property
    void parse_anyText_isValueOrSentence(@ForAll String text, @ForAll Unit unit) {
        Parsed parsed = new QuantityParser(Locale.ENGLISH).parse(text, unit);
        if (parsed instanceof Parsed.Refused refused) {
            assertTrue(refused.text(Locale.ENGLISH).length() > 20);
        } else {
            assertTrue(Double.isFinite(parsed.value().orElseThrow()));
        }
    }

    @Property
    void parse_numberLikeText_isValueOrSentence(@ForAll("numberLike") String text) {
        Parsed parsed = new QuantityParser(Locale.ENGLISH).parse(text, Unit.SECOND);
        assertTrue(parsed.value().isPresent() || parsed instanceof Parsed.Refused);
    }

    @Property
    void print_byDoublesAlone_isWhatExactDecimalsSay(
            @ForAll Unit unit, @ForAll("printed") double value, @ForAll("digits") Digits digits) {
        QuantityFormat format = QuantityFormat.ascii();
        assertEquals(format.exact(BigDecimal.valueOf(value), digits), format.number(value, digits));
        for (Scale scale : unit.scales()) {
            String exact = format.exact(scale.exactFromUnit(value), digits);
            String printed = format.print(value, scale, digits);
            assertEquals(exact, scale.plain().isEmpty() ? printed : printed.replace(" " + scale.plain(), ""));
        }
    }

    /** Halves and powers of ten among them, where rounding turns over. */
    @Provide
    Arbitrary<Double> printed() {
        return Arbitraries.oneOf(
                everyday(),
                tiny(),
                anyMagnitude(),
                Arbitraries.integers().between(-4000, 4000).map(eighths -> eighths / 8.0),
                Arbitraries.integers().between(-12, 12).map(exponent -> Math.pow(10, exponent)),
                Arbitraries.integers().between(0, 12).map(exponent -> Math.pow(10, exponent) - 0.004));
    }

    @Provide
    Arbitrary<Digits> digits() {
        return Arbitraries.of(
                Digits.significant(3),
                Digits.significant(1),
                Digits.atMostSignificant(3),
                Digits.atMostSignificant(9),
                Digits.decimals(0),
                Digits.decimals(2),
                Digits.atMostDecimals(1),
                Digits.atMostDecimals(12),
                Digits.all());
    }

    @Provide
    Arbitrary<Locale> locales() {
        return Arbitraries.of(Locale.ROOT, Locale.ENGLISH, Locale.GERMAN, Locale.FRENCH, Locale.forLanguageTag("ar"));
    }

    /** Bit patterns, since decimal generation favours everyday sizes. */
    @Provide
    Arbitrary<Double> anyMagnitude() {
        return Arbitraries.longs().map(Double::longBitsToDouble).filter(value -> Math.abs(value) < 1e300);
    }

    @Provide
    Arbitrary<Double> everyday() {
        return Arbitraries.doubles().between(-1e5, 1e5).ofScale(6);
    }

    @Provide
    Arbitrary<Double> tiny() {
        return Arbitraries.doubles().between(-1, 0).ofScale(9);
    }

    @Provide
    Arbitrary<String> numberLike() {
        return Arbitraries.strings().withChars("0123456789.,' -+eE%hmins").ofMaxLength(20);
    }
}
