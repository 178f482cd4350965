package org.sagwise.part;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A coil wound of wire, wrap against wrap.
 *
 * @param wire its wire
 * @param wraps turns, above 0, broken numbers allowed
 * @param innerDiameterM diameter of what it is wound on (m), above 0
 * @param legsM length of both ends together that are not wound but carry the current (m), 0 or more
 */
public record CoilWinding(CoilWire wire, double wraps, double innerDiameterM, double legsM) {

    private static final double M_PER_MM = 1e-3;

    public CoilWinding {
        Require.positive(wraps, "wraps");
        Require.positive(innerDiameterM, "innerDiameterM");
        Require.notNegative(legsM, "legsM");
    }

    /**
     * How many wraps bring a coil to a wanted resistance at 20 °C; empty where the legs alone have
     * more.
     *
     * @param wantedOhm wanted resistance (Ω), above 0
     */
    public static OptionalDouble wrapsFor(CoilWire wire, double innerDiameterM, double legsM, double wantedOhm) {
        Require.positive(wantedOhm, "wantedOhm");
        double woundM = wantedOhm / wire.ohmPerM() - legsM;
        return woundM > 0 ? OptionalDouble.of(woundM / wrapM(wire, innerDiameterM)) : OptionalDouble.empty();
    }

    /**
     * Length of wire in one wrap (m): a helix whose middle line has the diameter of the core plus
     * one wire and which climbs by the width of the strands side by side.
     */
    private static double wrapM(CoilWire wire, double innerDiameterM) {
        double round = Math.PI * (innerDiameterM + wire.diameterM());
        double pitch = wire.strands() * wire.diameterM();
        return Math.hypot(round, pitch);
    }

    /** Length of wire from end to end (m): wraps · √((π(d_inner + d))² + pitch²) + legs. */
    public double lengthM() {
        return wraps * wrapM(wire, innerDiameterM) + legsM;
    }

    /** Resistance at 20 °C (Ω): ρ·L/(strands·A). */
    public double ohm() {
        return wire.ohmPerM() * lengthM();
    }

    /**
     * Resistance at 20 °C (Ω) within which the coil lies, wound as it is of wire as it is sold: from least resistivity
     * and thickest wire to most and thinnest. Where no source says how far the metal's resistivity spreads, the diameter
     * alone does.
     */
    public Band ohmSpread() {
        return new Band(ohmOff(-1), ohmOff(1));
    }

    private double ohmOff(int side) {
        double thinnerM = side * WireTolerance.withinM(wire.diameterM());
        double rho = wire.alloy().resistivityOhmM()
                + side * wire.alloy().spreadOhmM().orElse(0);
        CoilWire off = new CoilWire(wire.alloy().withResistivity(rho), wire.diameterM() - thinnerM, wire.strands());
        return new CoilWinding(off, wraps, innerDiameterM, legsM).ohm();
    }

    /** The same with another number of wraps, above 0. */
    public CoilWinding withWraps(double others) {
        return new CoilWinding(wire, others, innerDiameterM, legsM);
    }

    /** Resistance (Ω) at this temperature (°C). */
    public double ohmAt(double temperatureC) {
        return ohm() * wire.alloy().factor().at(temperatureC);
    }

    /** Mass of the wire (kg). */
    public double massKg() {
        return wire.areaM2() * lengthM() * wire.alloy().densityKgPerM3();
    }

    /**
     * Surface of the wire, all strands, legs included (m²).
     */
    public double surfaceM2() {
        return Math.PI * wire.diameterM() * wire.strands() * lengthM();
    }

    /** Length of the wound part along its axis (mm). */
    public double widthMm() {
        return wraps * wire.strands() * wire.diameterM() / M_PER_MM;
    }

    /** Surface load (mW/mm²) at this power (W). */
    public double surfaceLoadMwPerMm2(double powerW) {
        double mwPerW = 1e3;
        return powerW * mwPerW / (surfaceM2() / (M_PER_MM * M_PER_MM));
    }

    /** Surface of the wound wire alone (m²), without the legs. */
    private double woundM2() {
        return Math.PI * wire.diameterM() * wire.strands() * (lengthM() - legsM);
    }

    private double legsM2() {
        return Math.PI * wire.diameterM() * wire.strands() * legsM;
    }

    private double outerDiameterM() {
        return innerDiameterM + 2 * wire.diameterM();
    }

    /**
     * Outline of the wound part (m²): the cylinder around it with both its ends, or the surface of
     * its wire where that is less. Nothing can radiate more than its outline would if it were black.
     */
    public double outlineM2() {
        double across = outerDiameterM();
        double cylinder = Math.PI * across * (widthMm() * M_PER_MM + 0.5 * across);
        return Math.min(cylinder, woundM2());
    }

    /**
     * How the coil warms and cools in still air. Radiation: wraps see one another, so that the wound
     * part radiates from its outline, the blacker for the hollows in it, as a grey body in a grey
     * enclosure does: 1/ε′ = 1 + (1/ε − 1)·outline/wire. Convection: air does not get between wraps
     * that touch, so that a coil counts as one cylinder as wide as it is; wraps so few that they are
     * less than half as wide as across count in part as free wire (teaching value). Legs are free
     * wire.
     */
    public CoilThermal thermal() {
        double emissivity = wire.alloy().emissivity();
        double outline = outlineM2();
        double shown = woundM2() > 0 ? outline / woundM2() : 1;
        double outlineEmissivity = 1 / (1 + (1 / emissivity - 1) * shown);
        double together = Math.min(1, 2 * widthMm() * M_PER_MM / outerDiameterM());
        return new CoilThermal(
                massKg() * wire.alloy().specificHeatJPerKgK(),
                outlineEmissivity * outline + emissivity * legsM2(),
                List.of(
                        new CoilThermal.Cylinder(outerDiameterM(), together * outline),
                        new CoilThermal.Cylinder(wire.diameterM(), (1 - together) * woundM2() + legsM2())));
    }
}
