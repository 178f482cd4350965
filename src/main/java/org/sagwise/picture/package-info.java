/**
 * Paints a bench, a staircase and symbols with a {@link org.sagwise.picture.pen.Pen}: one painter
 * for screen, PNG, SVG, PDF and any surface to come.
 *
 * <p>May use {@code assessment}; neither AWT nor JavaFX, so that pictures need no display, nor even
 * a Java.
 */
package org.sagwise.picture;
