package org.sagwise.text;

/** Which characters may be printed. */
public enum Signs {
    /** Those of print: −, Ω, µ, °, ², — and ∞. */
    PRINT,
    /** ASCII only: -, ohm, u, C. */
    ASCII
}
