package org.sagwise.picture.geometry;

/** What can be filled or stroked. */
public sealed interface Shape permits Box, Round, Oval, Line, Path {

    /** Whether all its coordinates are finite, and none of its sides is negative. */
    boolean isDrawable();
}
