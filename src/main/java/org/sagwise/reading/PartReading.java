package org.sagwise.reading;

import java.util.Locale;
import org.sagwise.part.PartKind;

/**
 * What a person could measure at a part that is not a cell.
 *
 * @param id id of the part
 * @param kind what it is
 * @param currentA current through it from its first terminal to its second; of a supply and a
 *     charger positive when it delivers; of a board the current into {@code in+}; A
 * @param voltsV potential of its first terminal minus its second, V
 * @param powerW the product of the two, W
 * @param state what state it is in
 */
public record PartReading(String id, PartKind kind, double currentA, double voltsV, double powerW, State state) {

    /** States that a part can be found in. */
    public enum State {
        /** Does what it is there for. */
        WORKING,
        /** A switch that is not closed. */
        OPEN,
        /** A reverse guard that keeps a current from flowing backwards. */
        BLOCKING,
        /** A fuse or a coil that has melted. */
        BLOWN,
        /** A board that gives all the voltage it can and still less power than asked. */
        OUTPUT_AT_MAX,
        /** A board that cannot go low enough and gives more power than asked. */
        OUTPUT_AT_MIN,
        /** A board that stopped because its input fell below its cut-off. */
        STOPPED_CUTOFF,
        /** A board that stopped because it would draw more than it may. */
        STOPPED_INPUT_LIMIT,
        /** A board that stopped because the pack cannot give the power at any voltage. */
        STOPPED_NO_POWER,
        /** A board that stopped because its output is shorted. */
        STOPPED_OUTPUT_SHORTED,
        /** A board or charger with nothing to do, or switched off after it was done. */
        IDLE,
        /** A charger holding its current. */
        CONSTANT_CURRENT,
        /** A charger holding its voltage. */
        CONSTANT_VOLTAGE;

        /** What can be seen of it without a meter. */
        State seen() {
            return this == OPEN || this == BLOWN ? this : WORKING;
        }
    }

    /** The end of the key under which texts have the state: a switch that conducts is closed, other parts work. */
    public String stateKey() {
        return kind == PartKind.SWITCH && state == State.WORKING
                ? "closed"
                : state.name().toLowerCase(Locale.ROOT);
    }
}
