package org.sagwise.quantity;

import static org.sagwise.quantity.Scale.of;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The units in which values are held inside, each with the ways in which a person may write it.
 *
 * <p>Units and prefixes follow the SI (BIPM, The International System of Units, 9th edition, 2019);
 * beside them stand the ampere-hour and watt-hour of the trade, and the degree Fahrenheit, which is
 * read but never printed (°C = (°F − 32) / 1.8, NIST SP 811, appendix B.8).
 */
public enum Unit {
    /** Potential and its differences. */
    VOLT(of("V", "V", "1", "volt", "volts"), of("mV", "mV", "1e-3", "millivolt", "millivolts")),
    /** Current. */
    AMPERE(
            of("A", "A", "1", "amp", "amps", "ampere", "amperes"),
            of("mA", "mA", "1e-3", "milliamp", "milliamps", "milliampere"),
            of("µA", "uA", "1e-6", "microamp", "microamps")),
    /** Resistance. */
    OHM(
            of("Ω", "ohm", "1", "ohms"),
            of("µΩ", "uohm", "1e-6", "uΩ", "microohm", "microohms"),
            of("mΩ", "mohm", "1e-3", "mohms", "milliohm", "milliohms"),
            of("kΩ", "kohm", "1e3", "kohms", "kilohm", "kilohms", "kiloohm"),
            of("MΩ", "Mohm", "1e6", "Mohms", "megohm", "megohms", "megaohm")),
    /** Power. */
    WATT(
            of("W", "W", "1", "watt", "watts"),
            of("mW", "mW", "1e-3", "milliwatt", "milliwatts"),
            of("kW", "kW", "1e3", "kilowatt", "kilowatts")),
    /** Energy as the trade counts it: 1 Wh = 3600 J. */
    WATT_HOUR(
            of("Wh", "Wh", "1", "W·h", "watt-hour", "watt-hours"),
            of("mWh", "mWh", "1e-3"),
            of("kWh", "kWh", "1e3"),
            joule("J", BigDecimal.ONE, "joule", "joules"),
            joule("kJ", BigDecimal.valueOf(1000))),
    /** Charge as the trade counts it: 1 Ah = 3600 C. */
    AMPERE_HOUR(
            of("Ah", "Ah", "1", "A·h", "amp-hour", "amp-hours", "ampere-hour"),
            of("mAh", "mAh", "1e-3", "milliamp-hour", "milliamp-hours")),
    /** Temperature. */
    CELSIUS(
            of("°C", "C", "1", "ºC", "℃", "degC", "deg C", "celsius"),
            new Scale("K", "K", BigDecimal.ONE, new BigDecimal("-273.15"), List.of("kelvin")),
            new Scale(
                    "°F",
                    "F",
                    BigDecimal.ONE.divide(new BigDecimal("1.8"), MathContext.DECIMAL128),
                    new BigDecimal("-32").divide(new BigDecimal("1.8"), MathContext.DECIMAL128),
                    List.of("ºF", "degF", "deg F", "fahrenheit"))),
    /** Difference of temperatures. */
    KELVIN(of("K", "K", "1", "kelvin", "°C", "C")),
    /** Length; written in millimetres on a bench. */
    METRE(
            of("m", "m", "1", "metre", "metres", "meter", "meters"),
            of("cm", "cm", "1e-2"),
            of("mm", "mm", "1e-3", "millimetre", "millimetres", "millimeter", "millimeters"),
            of("µm", "um", "1e-6")),
    /** Cross-section and surface; written in square millimetres. */
    SQUARE_METRE(of("m²", "m2", "1"), of("cm²", "cm2", "1e-4"), of("mm²", "mm2", "1e-6", "sqmm", "mm^2")),
    /** Time. */
    SECOND(
            of("s", "s", "1", "sec", "secs", "second", "seconds", "Sekunde", "Sekunden"),
            of("ms", "ms", "1e-3", "millisecond", "milliseconds"),
            of("min", "min", "60", "m", "mins", "minute", "minutes", "Minuten"),
            of("h", "h", "3600", "hr", "hrs", "hour", "hours", "Std", "Stunde", "Stunden")),
    /** A share of one: state of charge, health, efficiency. */
    FRACTION(of("", "", "1"), of("%", "%", "1e-2", "percent", "per cent", "Prozent")),
    /** Melting value of a fuse. */
    AMPERE_SQUARED_SECOND(of("A²s", "A2s", "1", "A^2s", "A² s", "A2 s")),
    /** Power on a surface. */
    WATT_PER_SQUARE_METRE(of("W/m²", "W/m2", "1"), of("mW/mm²", "mW/mm2", "1e3"), of("W/cm²", "W/cm2", "1e4")),
    /** Mass. */
    KILOGRAM(of("kg", "kg", "1"), of("g", "g", "1e-3", "gram", "grams"), of("mg", "mg", "1e-6"));

    private final List<Scale> scales;

    Unit(Scale... scales) {
        this.scales = List.of(scales);
    }

    /** Every way of writing this unit; the first is the unit itself (factor 1). */
    public List<Scale> scales() {
        return scales;
    }

    /** The scale of the unit itself, with factor 1. */
    public Scale base() {
        return scales.get(0);
    }

    /**
     * The scale with this symbol, for code that names one.
     *
     * @throws IllegalArgumentException if this unit is never written so
     */
    public Scale scale(String symbol) {
        return scales.stream()
                .filter(scale -> scale.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(this + " is not in " + symbol));
    }

    /** The unit whose own symbol this is, as in {@code A}; empty for any other text. */
    public static Optional<Unit> ofSymbol(String symbol) {
        return Stream.of(values())
                .filter(unit -> !symbol.isEmpty() && unit.base().symbol().equals(symbol))
                .findFirst();
    }

    /**
     * The scale that a person means by this spelling.
     *
     * <p>Upper and lower case are taken as written first, since {@code mΩ} and {@code MΩ} differ;
     * only where that finds nothing, and one scale alone fits, does case not matter.
     */
    Optional<Scale> spelled(String text) {
        Optional<Scale> exact = scales.stream().filter(s -> s.isSpelled(text)).findFirst();
        if (exact.isPresent()) {
            return exact;
        }
        List<Scale> loose =
                scales.stream().filter(s -> s.isSpelledIgnoringCase(text)).toList();
        return loose.size() == 1 ? Optional.of(loose.get(0)) : Optional.empty();
    }

    /** Name of what is measured in the bundle of texts. */
    String textKey() {
        return "measured." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Scale joule(String symbol, BigDecimal joules, String... aliases) {
        BigDecimal wattHours = joules.divide(BigDecimal.valueOf(3600), MathContext.DECIMAL128);
        return new Scale(symbol, symbol, wattHours, BigDecimal.ZERO, List.of(aliases));
    }
}
