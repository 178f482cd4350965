package org.sagwise.hazard;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;

/** What only time shows. It is found by {@link LookAhead}, which runs the bench, and not at the first moment. */
final class AheadHazards {

    static final Section SECTION = new Section(
            "What only time shows",
            List.of(
                    ahead(
                            "ahead-overcharged",
                            500,
                            "WARNING",
                            "a cell is charged beyond what it bears without lasting harm",
                            "which cell, and when"),
                    ahead(
                            "ahead-reversed",
                            510,
                            "WARNING",
                            "others drive a cell below zero volts while a coil still gets "
                                    + Listing.percent(LookAhead.STILL_USED) + " of its first watts",
                            "which cell, and when"),
                    ahead(
                            "ahead-wire-melts",
                            520,
                            "WARNING",
                            "a jumper reaches the melting point of copper",
                            "which wire, and when"),
                    ahead(
                            "ahead-coil-melts",
                            530,
                            "CAUTION",
                            "a dry coil reaches the melting point of its wire",
                            "which coil, and when"),
                    ahead("ahead-fuse", 540, "NOTICE", "a fuse melts", "when, and at how many amps"),
                    ahead("ahead-guard", 550, "NOTICE", "the guard of a cell opens", "when, and at how many amps"),
                    ahead(
                            "ahead-board",
                            560,
                            "NOTICE",
                            "a board stops while every cell has more than " + Listing.percent(LookAhead.LEFT)
                                    + " of its charge",
                            "when, and how much is left")));

    private AheadHazards() {}

    private static Hazard ahead(String id, int rank, String signal, String begins, String says) {
        return Hazard.of(
                id,
                rank,
                new Listing(signal, "in a run pressed as usual or with the button held: " + begins, "the run's", says),
                context -> List.of());
    }
}
