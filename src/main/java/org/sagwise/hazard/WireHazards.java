package org.sagwise.hazard;

import static org.sagwise.hazard.Cures.Way.CLOSED_CIRCUIT;
import static org.sagwise.hazard.Cures.Way.FEWER_WATTS;
import static org.sagwise.hazard.Cures.Way.MORE_OHMS;
import static org.sagwise.hazard.Cures.Way.NEW_SWITCH;
import static org.sagwise.hazard.Cures.Way.SMALLER_FUSE;
import static org.sagwise.hazard.Cures.Way.SOUND_JOINT;
import static org.sagwise.hazard.Cures.Way.THICKER_WIRE;
import static org.sagwise.hazard.Cures.Way.TURN_AT_GUARD;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Hides.parts;
import static org.sagwise.hazard.Signal.CAUTION;
import static org.sagwise.hazard.Signal.NOTICE;
import static org.sagwise.hazard.Signal.WARNING;
import static org.sagwise.hazard.Threshold.above;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.hazard.WireThreshold.Wire;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.part.ReverseGuardSpec;
import org.sagwise.part.WireLimits;
import org.sagwise.reading.PartReading;

/** What can be wrong with the way that a current takes. */
final class WireHazards {

    /** Cells of one pack that stand alike differ by less, whatever their charge and sag, V. */
    private static final double TURNED_V = 2;

    static final Section SECTION = new Section(
            "Wires, fuses, coil, switch",
            List.of(
                    Hazard.of(
                            "jumper-over-ampacity",
                            350,
                            new Listing(
                                    "CAUTION",
                                    "above a guide for steady current in free air",
                                    "Kuphaldt, Lessons in Electric Circuits I (AWG 10 to 20); HyperPhysics wire table"
                                            + " (thinner)",
                                    "wire too thin"),
                            new WireThreshold(
                                    above("A", Wire::currentA, (Wire wire) -> WireLimits.steadyCurrentA(wire.size()))
                                            .where(wire -> wire.currentA() <= WireLimits.meltingCurrentA(wire.size())),
                                    CAUTION),
                            cures(THICKER_WIRE)),
                    Hazard.of(
                            "jumper-over-fusing",
                            220,
                            new Listing(
                                    "WARNING",
                                    "above Preece's melting current, 80.02·d^1.5 with d in mm",
                                    "Preece, as quoted by Brooks",
                                    "wire that can melt"),
                            new WireThreshold(
                                    above("A", Wire::currentA, wire -> WireLimits.meltingCurrentA(wire.size())),
                                    WARNING),
                            parts(WARNING, "jumper-over-ampacity"),
                            cures(THICKER_WIRE)),
                    Hazard.of(
                            "joint-hot",
                            225,
                            new Listing(
                                    "NOTICE for a loose joint; CAUTION for a hot one, WARNING from "
                                            + Listing.number(HotJoint.BURNING_W) + " W",
                                    "more than " + Listing.number(HotJoint.HOT_W)
                                            + " W at one end of a joint of more than "
                                            + Listing.number(HotJoint.SOUND_OHM) + " Ω, or "
                                            + Listing.number(HotJoint.HOT_ALL_THE_SAME_W) + " W at any; more than "
                                            + Listing.number(HotJoint.TOLD_V) + " V across more than "
                                            + Listing.number(HotJoint.USUAL_OHM) + " Ω",
                                    "about 15 K/W of a small contact: from memory; the ohms: typical of clips",
                                    "clean and tighten it"),
                            new HotJoint(),
                            cures(SOUND_JOINT)),
                    Hazard.of(
                            "fuse-too-large",
                            360,
                            new Listing(
                                    "CAUTION",
                                    "at the fuse's rating a cell would be over its limit, or a wire over its guide",
                                    "as the limits",
                                    "who suffers first"),
                            new FuseTooLarge(),
                            cures(SMALLER_FUSE, THICKER_WIRE)),
                    Hazard.of(
                            "fuse-will-open",
                            410,
                            new Listing(
                                    "NOTICE",
                                    "above " + Listing.number(FuseSpec.LEAST_MELTING_RATIO) + " times its rating",
                                    "the fuse's own; " + Listing.number(1.2) + ": from memory",
                                    "it will melt"),
                            new PartThreshold(
                                    PartKind.FUSE,
                                    above(
                                                    "A",
                                                    PartView::currentA,
                                                    (PartView fuse) -> FuseSpec.LEAST_MELTING_RATIO * ratingA(fuse))
                                            .telling(WireHazards::ratingA),
                                    fuse -> NOTICE,
                                    (caution, fuse) -> {}),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "ptc-will-trip",
                            411,
                            new Listing(
                                    "NOTICE",
                                    "above the geometric mean of the currents that a resettable fuse holds and that trip"
                                            + " it, less in warm air",
                                    "the part's own; see model notes",
                                    "it will trip and stays hot"),
                            new PartThreshold(
                                    PartKind.PTC,
                                    above("A", PartView::currentA, WireHazards::leastTripA)
                                            .telling(ptc -> ptc(ptc).holdA()),
                                    ptc -> NOTICE,
                                    (caution, ptc) -> {}),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of("ptc-over-voltage", 235, PtcOverVoltage.LISTING, new PtcOverVoltage()),
                    Hazard.of(
                            "reverse-guard-over-rating",
                            345,
                            new Listing("CAUTION", "above `rating_A`", "the guard's own", "amps against rating"),
                            new PartThreshold(
                                    PartKind.REVERSE_GUARD,
                                    above("A", PartView::currentA, WireHazards::guardRatingA),
                                    guard -> CAUTION,
                                    (caution, guard) -> caution.detail("powerW", guard.powerW())),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "reverse-guard-blocks",
                            385,
                            new Listing(
                                    "NOTICE",
                                    "a reverse guard keeps back more than " + Listing.number(TURNED_V) + " V",
                                    "more than sag or unequal charge: our choice",
                                    "what stands the wrong way round"),
                            new PartThreshold(
                                    PartKind.REVERSE_GUARD,
                                    above("V", WireHazards::heldBackV, (PartView guard) -> TURNED_V)
                                            .telling(guard -> Double.NaN),
                                    guard -> NOTICE,
                                    (caution, guard) -> {}),
                            cures(TURN_AT_GUARD)),
                    Hazard.of(
                            "coil-over-limit",
                            340,
                            new Listing(
                                    "CAUTION; WARNING from twice",
                                    "above `limit_W`",
                                    "the coil's own; " + Listing.number(Gravity.GLOWING) + ": our choice",
                                    "watts against limit"),
                            new PartThreshold(
                                    PartKind.COIL,
                                    above("W", PartView::powerW, WireHazards::limitW),
                                    coil -> Gravity.coil(coil.powerW(), limitW(coil)),
                                    (caution, coil) -> caution.detail("coilV", coil.voltsV())),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "switch-stuck",
                            230,
                            new Listing(
                                    "WARNING; NOTICE while nothing flows",
                                    "a switch that cannot open",
                                    "–",
                                    "it fires unattended"),
                            new SwitchStuck(),
                            cures(NEW_SWITCH)),
                    Hazard.of(
                            "open-circuit",
                            380,
                            new Listing(
                                    "NOTICE",
                                    "no current reaches a load that is joined to something",
                                    "–",
                                    "which joint is missing, or what blocks"),
                            new OpenCircuit(),
                            parts(NOTICE, "reverse-guard-blocks"),
                            cures(CLOSED_CIRCUIT, TURN_AT_GUARD))));

    private WireHazards() {}

    private static double ratingA(PartView fuse) {
        return fuse.context().spec(fuse.part().id(), FuseSpec.class).ratingA();
    }

    private static PtcSpec ptc(PartView ptc) {
        return ptc.context().spec(ptc.part().id(), PtcSpec.class);
    }

    private static double leastTripA(PartView ptc) {
        return ptc(ptc).leastTripA(ptc.context().bench().scenario().ambientC());
    }

    private static double heldBackV(PartView guard) {
        return guard.reading().state() == PartReading.State.BLOCKING ? guard.voltsV() : 0;
    }

    private static double guardRatingA(PartView guard) {
        return guard.context().spec(guard.part().id(), ReverseGuardSpec.class).ratingA();
    }

    private static double limitW(PartView coil) {
        return coil.context().bench().values(coil.part().id()).number("limit_W").orElse(Double.POSITIVE_INFINITY);
    }
}
