package org.sagwise.picture.layout;

/** In what manner a scenario is drawn. */
public enum Drawing {
    /** Things as they look on the workshop table. */
    BENCH,
    /** Symbols joined by lines: what is connected, whatever it looks like. */
    SCHEMATIC
}
