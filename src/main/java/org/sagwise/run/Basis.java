package org.sagwise.run;

import java.util.Locale;

/** On what a number that people are told rests. */
public enum Basis {
    /** A standard, a handbook, a paper, open data or data sheets; the model notes name it. */
    PUBLISHED,
    /** Typical of the kind, from memory; no source at hand. */
    TYPICAL,
    /** Chosen by this program so that something can be taught. */
    TEACHING;

    /** The word for it in machine-readable output. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
