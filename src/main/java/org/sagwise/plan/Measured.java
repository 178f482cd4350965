package org.sagwise.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;

/**
 * What follows from a {@link MeterCheck}: with I = U_coil / R_coil, internal resistance (U_rest −
 * U_cell) / I and path resistance (U_cell − U_coil) / I.
 *
 * <p>Uncertainty comes from the steps of the meter alone: a step d stands for a uniform spread with
 * the standard uncertainty d/√12 (JCGM 100:2008, GUM, F.2.2.1), and goes into the results to first
 * order (GUM, 5.1.2). What the meter itself is off by, and what the cell does in the seconds
 * between two readings, comes on top.
 *
 * @param check the readings
 * @param currentA current, A
 * @param internalOhm internal resistance, Ω
 * @param pathOhm resistance of contacts, wires and switch together, Ω
 * @param blame share of each reading in the variance of the internal resistance
 */
public record Measured(
        MeterCheck check, Estimate currentA, Estimate internalOhm, Estimate pathOhm, Map<Reading, Double> blame) {

    /** Capacity of a usual cell, where nobody says which, mAh: typical, from memory. */
    public static final double USUAL_CAPACITY_MAH = 2500;

    /** An example of a continuous limit, A, for people who fill in a form; never assumed of a cell. */
    public static final double EXAMPLE_LIMIT_A = 20;

    private static final double ROOT_12 = Math.sqrt(12);
    private static final MathContext DIGITS = new MathContext(6);

    public Measured {
        blame = Map.copyOf(blame);
    }

    /** The readings. */
    public enum Reading {
        REST,
        CELL,
        COIL,
        OHM
    }

    static Measured of(MeterCheck check) {
        double u = check.voltsStep() / ROOT_12;
        double uOhm = check.ohmStep() / ROOT_12;
        double k = check.coilV();
        double r = check.coilOhm();
        double sag = check.restV() - check.cellV();
        double drop = check.cellV() - k;
        double[] internal = {u * r / k, u * r / k, u * sag * r / (k * k), uOhm * sag / k};
        double[] path = {0, u * r / k, u * check.cellV() * r / (k * k), uOhm * drop / k};
        double[] current = {0, 0, u / r, uOhm * k / (r * r)};
        return new Measured(
                check,
                new Estimate(k / r, length(current)),
                new Estimate(sag * r / k, length(internal)),
                new Estimate(drop * r / k, length(path)),
                blame(internal));
    }

    private static double length(double[] parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    private static Map<Reading, Double> blame(double[] parts) {
        double whole = length(parts);
        Map<Reading, Double> blame = new EnumMap<>(Reading.class);
        for (Reading reading : Reading.values()) {
            double share = whole > 0 ? parts[reading.ordinal()] / whole : 0;
            blame.put(reading, share * share);
        }
        return blame;
    }

    public double sagV() {
        return check.restV() - check.cellV();
    }

    public double dropV() {
        return check.cellV() - check.coilV();
    }

    public double powerW() {
        return check.coilV() * check.coilV() / check.coilOhm();
    }

    /** What would make the result better first. */
    public Advice advice() {
        if (!internalOhm.isResolved()) {
            return Advice.MORE_CURRENT;
        }
        double ohm = blame.getOrDefault(Reading.OHM, 0.0);
        return ohm > 0.5 ? Advice.FINER_OHMS : Advice.FINER_VOLTS;
    }

    /** What would improve a measurement. */
    public enum Advice {
        /** The sag is lost in the meter's steps: a coil of fewer ohms within the cell's limit. */
        MORE_CURRENT,
        /** The coil's ohms are the weakest reading. */
        FINER_OHMS,
        /** The volts are the weakest readings. */
        FINER_VOLTS
    }

    /**
     * A bench that gives these readings. What cannot be measured like this is taken over from the
     * caller.
     *
     * @param title its title
     * @param capacityMah capacity of the cell, mAh
     * @param limitA continuous limit of the cell, A; NaN where it is not known, which the bench then says, too
     */
    public Scenario scenario(String title, double capacityMah, double limitA) {
        Part cell = Part.of(
                "A",
                PartKind.CELL,
                "rest_V",
                check.restV(),
                "internal_mohm",
                milli(internalOhm.value()),
                "capacity_mAh",
                capacityMah);
        if (!Double.isNaN(limitA)) {
            cell = cell.with("limit_A", limitA);
        }
        Part button = Part.of("fire", PartKind.SWITCH, "closed_mohm", 0);
        Part coil = Part.of("coil", PartKind.COIL, "ohm", check.coilOhm());
        double halfMohm = milli(pathOhm.value() / 2);
        return Scenario.of(
                        title,
                        List.of(cell, button, coil),
                        List.of(
                                Link.touch(cell.terminal("+"), button.terminal("1"), halfMohm),
                                Link.ideal(button.terminal("2"), coil.terminal("1")),
                                Link.touch(coil.terminal("2"), cell.terminal("-"), halfMohm)))
                .withProbes(Optional.of(Probes.of(cell.terminal("+"), cell.terminal("-"))));
    }

    /** To six digits: more than any meter knows, and no noise of binary fractions. */
    private static double milli(double ohm) {
        return BigDecimal.valueOf(ohm * 1000).round(DIGITS).doubleValue();
    }
}
