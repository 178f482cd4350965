package org.sagwise.plan.pairing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.OwnCell;

/** Why a cell belongs into no new set. */
public enum Fitness {
    RETIRED,
    MARRIED,
    WORN,
    LOSES_CHARGE,
    NO_CAPACITY,
    NO_RESISTANCE,
    /** No other cell of its make is there to belong to, or too few for a set. */
    ALONE;

    /** Share of the rated capacity below which a cell counts as worn: common practice, no source. */
    public static final double WORN_SHARE = 0.8;

    /**
     * Volts that a cell loses from its rest after a full charge by lying for a week, from which on
     * it counts as leaking: common practice, no source.
     */
    public static final double MOST_LOST_V = 0.05;

    /** What is against a cell by itself; empty if nothing is. */
    public static Optional<Fitness> against(OwnCell cell, PairingWish wish, Catalogue catalogue) {
        if (!cell.isInUse()) {
            return Optional.of(RETIRED);
        } else if (cell.marriage().isPresent() && !wish.marriedToo()) {
            return Optional.of(MARRIED);
        } else if (isWorn(cell, catalogue)) {
            return Optional.of(WORN);
        } else if (losesCharge(cell)) {
            return Optional.of(LOSES_CHARGE);
        } else if (cell.capacityAh().isEmpty()) {
            return Optional.of(NO_CAPACITY);
        }
        return cell.resistanceOhm().isEmpty() ? Optional.of(NO_RESISTANCE) : Optional.empty();
    }

    /** What is left of its rated capacity, by its last measurement; empty where either is not known. */
    public static OptionalDouble share(OwnCell cell, Catalogue catalogue) {
        OptionalDouble rated = cell.ratedAh(catalogue);
        return cell.capacityAh().isPresent() && rated.isPresent()
                ? OptionalDouble.of(cell.capacityAh().getAsDouble() / rated.getAsDouble())
                : OptionalDouble.empty();
    }

    public static boolean isWorn(OwnCell cell, Catalogue catalogue) {
        return share(cell, catalogue).orElse(1) < WORN_SHARE;
    }

    public static boolean losesCharge(OwnCell cell) {
        return cell.lostV().orElse(0) > MOST_LOST_V;
    }
}
