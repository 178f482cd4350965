package org.sagwise.run.playback;

import java.util.EnumSet;
import java.util.Set;
import org.sagwise.run.RunEvent.Kind;

/** What stops the clock, so that nobody misses it. */
final class Halts {

    /**
     * What is told without stopping: it says how a part is used and not that something has changed
     * for good.
     */
    private static final Set<Kind> TOLD_IN_PASSING = EnumSet.of(
            Kind.OVER_LIMIT,
            Kind.CHARGED_TOO_FAST,
            Kind.COIL_OVER_LIMIT,
            Kind.GUARD_CLOSED,
            Kind.PTC_RESET,
            Kind.CHARGER_HOLDS_VOLTAGE,
            Kind.BOARD_AT_MAX);

    static final Set<Kind> KINDS = EnumSet.complementOf(EnumSet.copyOf(TOLD_IN_PASSING));

    private Halts() {}

    static boolean isHalt(Kind kind) {
        return KINDS.contains(kind);
    }
}
