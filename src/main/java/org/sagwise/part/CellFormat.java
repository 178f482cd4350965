package org.sagwise.part;

import java.util.Optional;

/**
 * The round formats the bench knows, with nominal size of the bare cell and a typical mass. The
 * 18650's mass of 45.6 g was measured on one 3.35 Ah cell; the band of the trade is 45–50 g. The
 * masses of the other formats are from memory, no source at hand.
 */
public enum CellFormat {
    F18350("18350", 0.024),
    F18650("18650", 0.0456),
    F20700("20700", 0.060),
    F21700("21700", 0.070),
    F26650("26650", 0.092);

    /** What is meant where nobody says a format. */
    public static final CellFormat USUAL = F18650;

    private final TradeDesignation designation;
    private final double massKg;

    CellFormat(String trade, double massKg) {
        this.designation = TradeDesignation.parse(trade).orElseThrow();
        this.massKg = massKg;
    }

    /** The format with this trade designation, such as {@code 18650}; empty if unknown. */
    public static Optional<CellFormat> ofTrade(String trade) {
        for (CellFormat format : values()) {
            if (format.trade().equals(trade)) {
                return Optional.of(format);
            }
        }
        return Optional.empty();
    }

    /** Trade designation, such as {@code 18650}. */
    public String trade() {
        return designation.text();
    }

    /** Nominal diameter (m). */
    public double diameterM() {
        return designation.diameterMm() / 1000.0;
    }

    /** Nominal length (m). */
    public double lengthM() {
        return designation.lengthMm() / 1000.0;
    }

    /** Typical mass (kg). */
    public double massKg() {
        return massKg;
    }

    /** Surface of the bare cylinder, both ends included (m²). */
    public double areaM2() {
        double d = diameterM();
        return Math.PI * d * lengthM() + 0.5 * Math.PI * d * d;
    }
}
