package org.sagwise.plan.drawer;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.key.Keys;

/**
 * What was measured on a cell on one day; not everything is measured each time.
 *
 * @param on the day
 * @param capacityAh charge that it gave from full to empty (Ah)
 * @param resistanceOhm internal resistance as it was read, a protected cell's board included (Ω)
 * @param restV rest voltage, an hour or more after a full charge (V)
 * @param weekV rest voltage after lying for a week since then (V)
 * @param how by which method and at which temperature; may be empty
 * @param foreign what other tools left under {@code x}
 */
public record CellMeasurement(
        LocalDate on,
        OptionalDouble capacityAh,
        OptionalDouble resistanceOhm,
        OptionalDouble restV,
        OptionalDouble weekV,
        String how,
        Optional<Object> foreign) {

    private static final double MILLI = 1e-3;

    /** What keys that keep to {@link DrawerKeys#MEASURED} say. */
    public static CellMeasurement of(Keys keys) {
        return new CellMeasurement(
                DrawerKeys.date(keys, "on").orElseThrow(),
                milli(keys, "capacity_mAh"),
                milli(keys, "internal_mohm"),
                keys.number("rest_V"),
                keys.number("week_V"),
                keys.text("how").orElse(""),
                keys.foreign());
    }

    private static OptionalDouble milli(Keys keys, String name) {
        OptionalDouble number = keys.number(name);
        return number.isPresent() ? OptionalDouble.of(number.getAsDouble() * MILLI) : number;
    }

    /** The same as keys of a file. */
    public Keys keys() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("on", on.toString());
        capacityAh.ifPresent(value -> keys.put("capacity_mAh", DrawerKeys.written(value / MILLI)));
        resistanceOhm.ifPresent(value -> keys.put("internal_mohm", DrawerKeys.written(value / MILLI)));
        restV.ifPresent(value -> keys.put("rest_V", value));
        weekV.ifPresent(value -> keys.put("week_V", value));
        if (!how.isEmpty()) {
            keys.put("how", how);
        }
        foreign.ifPresent(other -> keys.put(Keys.FOREIGN, other));
        return new Keys(keys);
    }

    /** Whether it holds a number at all. */
    public boolean saysAnything() {
        return capacityAh.isPresent() || resistanceOhm.isPresent() || restV.isPresent() || weekV.isPresent();
    }

    /** Volts lost by lying for a week (V); empty where both were not measured. */
    public OptionalDouble lostV() {
        return restV.isPresent() && weekV.isPresent()
                ? OptionalDouble.of(restV.getAsDouble() - weekV.getAsDouble())
                : OptionalDouble.empty();
    }
}
