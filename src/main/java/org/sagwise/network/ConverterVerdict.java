package org.sagwise.network;

import java.util.Optional;

/** Balances converters that might run together and says of each whether it does. */
final class ConverterVerdict {
    /** Load resistance (Ω) below which an output counts as shorted. */
    private static final double SHORT_OHM = 1e-6;

    /** Output current (A) that rounding alone may push backwards into a converter. */
    private static final double BACKWARD_A = 1e-9;

    /** Relative power error within which a converter counts as bringing what is wanted. */
    private static final double POWER = 1e-9;

    private final ConverterPorts ports;
    private final ConverterBalance balance;
    private final boolean anyShorted;

    ConverterVerdict(ConverterPorts ports) {
        this.ports = ports;
        boolean found = false;
        for (int j = 0; j < ports.count(); j++) {
            found |= shorted(j);
        }
        anyShorted = found;
        balance = found ? null : new ConverterBalance(ports);
    }

    private boolean shorted(int j) {
        return ports.commonSiemens(j) > 1 / (SHORT_OHM + Stance.BOARD_OHM);
    }

    /** Whether a source could not feed all converters on it together. */
    boolean sourceGaveWay() {
        return balance != null && balance.failed() >= 0;
    }

    /** Why a converter cannot go on; empty if it can. */
    Optional<ConverterState> whyStopped(int j) {
        if (anyShorted) {
            return shorted(j) ? Optional.of(ConverterState.STOPPED_OUTPUT_SHORTED) : Optional.empty();
        }
        if (balance.failed() >= 0) {
            return balance.failed() == j ? Optional.of(whyFailed(j)) : Optional.empty();
        }
        if (!balance.still(j)) {
            return Optional.of(ConverterState.STOPPED_UNSETTLED);
        }
        return limitPassed(j);
    }

    private ConverterState whyFailed(int j) {
        double unloadedV = balance.unloadedInputV(j);
        if (unloadedV == 0 || Double.isNaN(unloadedV)) {
            return ConverterState.IDLE;
        }
        return unloadedV < ports.converter(j).cutoffV() || unloadedV < 0
                ? ConverterState.STOPPED_CUTOFF
                : ConverterState.STOPPED_NO_SOLUTION;
    }

    private Optional<ConverterState> limitPassed(int j) {
        Element.Converter c = ports.converter(j);
        double inputV = balance.inputV(j);
        if (inputV == 0 || balance.outputA(j) < -BACKWARD_A) {
            return Optional.of(ConverterState.IDLE);
        }
        if (inputV < c.cutoffV()) {
            return Optional.of(ConverterState.STOPPED_CUTOFF);
        }
        return balance.inputA(j) > c.maxInputA() ? Optional.of(ConverterState.STOPPED_INPUT_LIMIT) : Optional.empty();
    }

    /** How a converter that goes on stands. */
    Stance.Converter running(int j, Stance.Converter before) {
        return before.driving(state(j), balance.inputA(j), balance.emfV(j));
    }

    /**
     * The voltage chosen tells whether a limit holds it. The power alone does not: a small current
     * that is the difference of large ones is known to some 1e-8 only.
     */
    private ConverterState state(int j) {
        Element.Converter c = ports.converter(j);
        double broughtW = balance.outputA(j) * balance.outputV(j);
        if (balance.outputA(j) <= 0) {
            return ConverterState.IDLE;
        }
        if (balance.chosenV(j) >= c.outMaxV() && broughtW < c.powerW() * (1 - POWER)) {
            return ConverterState.OUTPUT_AT_MAX;
        }
        return balance.chosenV(j) <= c.outMinV() && broughtW > c.powerW() * (1 + POWER)
                ? ConverterState.OUTPUT_AT_MIN
                : ConverterState.RUNNING;
    }
}
