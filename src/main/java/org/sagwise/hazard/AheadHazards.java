package org.sagwise.hazard;

import static org.sagwise.hazard.Cures.Way.FEWER_WATTS;
import static org.sagwise.hazard.Cures.Way.LIKE_CELL;
import static org.sagwise.hazard.Cures.Way.MORE_OHMS;
import static org.sagwise.hazard.Cures.Way.SAME_CHARGE;
import static org.sagwise.hazard.Cures.Way.THICKER_WIRE;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Foretold.on;
import static org.sagwise.hazard.Signal.CAUTION;
import static org.sagwise.hazard.Signal.NOTICE;
import static org.sagwise.hazard.Signal.WARNING;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.part.PtcSpec;
import org.sagwise.run.RunEvent.Kind;

/** What only time shows. It is found by {@link LookAhead}, which runs the bench, and not at the first moment. */
final class AheadHazards {

    static final Section SECTION = new Section(
            "What only time shows",
            List.of(
                    ahead(
                            "ahead-overcharged",
                            500,
                            "a cell is charged beyond what it bears without lasting harm",
                            "which cell, and when",
                            on(Kind.OVERCHARGED)
                                    .as(WARNING)
                                    .unless(
                                            "charger-too-high",
                                            "cell-above-full",
                                            "cell-charged-above-full",
                                            "supply-charges-cell",
                                            "unequal-charge-in-parallel",
                                            "reversed-in-series"),
                            cures(SAME_CHARGE)),
                    ahead(
                            "ahead-reversed",
                            510,
                            "others drive a cell below zero volts while a coil still gets "
                                    + Listing.percent(LookAhead.STILL_USED) + " of its first watts",
                            "which cell, and when",
                            on(Kind.REVERSED)
                                    .as(WARNING)
                                    .unless(
                                            "cell-driven-backwards",
                                            "reversed-in-series",
                                            "charger-reversed",
                                            "cell-deep-discharged"),
                            cures(SAME_CHARGE, LIKE_CELL)),
                    ahead(
                            "ahead-cell-ptc-fails",
                            513,
                            "the PTC inside a cell trips, and more than "
                                    + Listing.number(PtcSpec.CELL_MOST_FULL)
                                    + " times the volts of a full cell come to stand across it",
                            "which cell, when, and that it guards no row",
                            on(Kind.CELL_PTC_FAILED).as(WARNING).once(),
                            cures(MORE_OHMS)),
                    ahead(
                            "ahead-cid",
                            516,
                            "a cell is charged until its own current interrupter opens it",
                            "which cell, and when",
                            on(Kind.CID_OPENED).as(WARNING),
                            cures(SAME_CHARGE)),
                    ahead(
                            "ahead-wire-melts",
                            520,
                            "a jumper reaches the melting point of copper",
                            "which wire, and when",
                            on(Kind.WIRE_MELTED).as(WARNING).unless("jumper-over-fusing"),
                            cures(THICKER_WIRE)),
                    ahead(
                            "ahead-coil-melts",
                            530,
                            "a dry coil reaches the melting point of its wire",
                            "which coil, and when",
                            on(Kind.COIL_MELTED).as(CAUTION).unless("coil-over-limit"),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    ahead(
                            "ahead-fuse",
                            540,
                            "a fuse melts",
                            "when, and at how many amps",
                            on(Kind.FUSE_BLOWN).as(NOTICE).unless("fuse-will-open"),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    ahead(
                            "ahead-ptc",
                            543,
                            "a resettable fuse trips",
                            "when, and at how many amps",
                            on(Kind.PTC_TRIPPED).as(NOTICE).unless("ptc-will-trip"),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    ahead(
                            "ahead-cell-ptc",
                            546,
                            "the PTC inside a cell trips",
                            "which cell, and when",
                            on(Kind.CELL_PTC_TRIPPED).as(NOTICE),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    ahead(
                            "ahead-guard",
                            550,
                            "the guard of a cell opens",
                            "when, and at how many amps",
                            on(Kind.GUARD_CURRENT).as(NOTICE).unless("guard-trip"),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    ahead(
                            "ahead-board",
                            560,
                            "a board stops while every cell has more than " + Listing.percent(LookAhead.LEFT)
                                    + " of its charge",
                            "when, and how much is left",
                            on(Kind.BOARD_CUTOFF, Kind.BOARD_INPUT_LIMIT, Kind.BOARD_NO_POWER)
                                    .as(NOTICE)
                                    .unless("board-trouble", "cell-empty"),
                            cures(FEWER_WATTS))));

    private AheadHazards() {}

    private static Hazard ahead(String id, int rank, String begins, String says, Foretold foretold, Bearing... more) {
        List<Bearing> bearings = new ArrayList<>(List.of(more));
        bearings.add(foretold);
        String where = "in a run pressed as usual or with the button held: " + begins;
        Listing listing = new Listing(foretold.signal().name(), where, "the run's", says);
        return new Hazard(id, rank, listing, context -> List.of(), bearings);
    }
}
