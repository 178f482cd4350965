package org.sagwise.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit together with the scale in which a bare number is meant: the {@code mΩ} of a field, the
 * {@code _mohm} of a file's key.
 *
 * @param unit what is measured
 * @param scale one of the unit's scales
 */
public record Measure(Unit unit, Scale scale) {

    private static final Map<String, Measure> BY_ENDING = Map.ofEntries(
            Map.entry("V", Measure.of(Unit.VOLT)),
            Map.entry("volts", Measure.of(Unit.VOLT)),
            Map.entry("A", Measure.of(Unit.AMPERE)),
            Map.entry("ohm", Measure.of(Unit.OHM)),
            Map.entry("mohm", Measure.of(Unit.OHM, "mΩ")),
            Map.entry("W", Measure.of(Unit.WATT)),
            Map.entry("Wh", Measure.of(Unit.WATT_HOUR)),
            Map.entry("Ah", Measure.of(Unit.AMPERE_HOUR)),
            Map.entry("mAh", Measure.of(Unit.AMPERE_HOUR, "mAh")),
            Map.entry("C", Measure.of(Unit.CELSIUS)),
            Map.entry("mm", Measure.of(Unit.METRE, "mm")),
            Map.entry("mm2", Measure.of(Unit.SQUARE_METRE, "mm²")),
            Map.entry("s", Measure.of(Unit.SECOND)),
            Map.entry("share", Measure.of(Unit.FRACTION)),
            Map.entry("A2s", Measure.of(Unit.AMPERE_SQUARED_SECOND)));

    public Measure {
        if (!unit.scales().contains(scale)) {
            throw new IllegalArgumentException(unit + " is not written in " + scale.symbol());
        }
    }

    /** The unit itself, without a prefix. */
    public static Measure of(Unit unit) {
        return new Measure(unit, unit.base());
    }

    /**
     * The unit in one of its scales.
     *
     * @param symbol e.g. {@code mΩ}
     * @throws IllegalArgumentException if the unit is never written so
     */
    public static Measure of(Unit unit, String symbol) {
        return new Measure(unit, unit.scale(symbol));
    }

    /**
     * What the ending of a key says: {@code internal_mohm} is in milliohms.
     *
     * @return empty for a key whose ending names no unit, such as {@code awg}
     */
    public static Optional<Measure> ofKey(String key) {
        int underscore = key.lastIndexOf('_');
        return Optional.ofNullable(BY_ENDING.get(key.substring(underscore + 1)));
    }

    /**
     * What the ending of a name in the code says: {@code claimedAh} is in ampere-hours, {@code
     * loadOhm} in ohms.
     *
     * @return empty for a name whose ending names no unit
     */
    public static Optional<Measure> ofName(String name) {
        int start = name.length() - 1;
        while (start > 0 && !isCapital(name.charAt(start))) {
            start--;
        }
        String ending = name.substring(Math.max(start, 0));
        return Optional.ofNullable(BY_ENDING.getOrDefault(ending, BY_ENDING.get(ending.toLowerCase(Locale.ROOT))));
    }

    /** Names of the code are of ASCII. */
    private static boolean isCapital(char letter) {
        return letter >= 'A' && letter <= 'Z';
    }
}
