package org.sagwise.part;

/** How far heat has taken a cell, mildest first. */
public enum DistressStage {
    /** Within the temperature that the maker allows while discharging. */
    NONE,
    /** Warmer than the maker allows while discharging. */
    ABOVE_LIMIT,
    /**
     * The protective layer on the negative electrode (solid electrolyte interphase) breaks down and
     * gives off heat.
     */
    LAYER_BREAKDOWN,
    /** The vent may open and let out hot, burning gas. */
    VENT,
    /** The cell may heat itself faster than it can lose heat: thermal runaway. */
    RUNAWAY
}
