/**
 * Where everything lies on the bench: places and outlines of parts, their terminals, the ways of
 * the conductors and the places of labels and notes. Knows no colour and no reading.
 *
 * <p>Lengths are bench units: one is a pixel at 100 %, y grows downward, and {@link
 * org.sagwise.picture.layout.PartShape#GRID} of them make a grid unit of the scenario file.
 */
package org.sagwise.picture.layout;
