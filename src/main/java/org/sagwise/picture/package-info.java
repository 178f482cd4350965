/**
 * Paints a bench, a staircase and symbols on a {@code java.awt.Graphics2D}: one painter for screen,
 * PNG, SVG and PDF.
 *
 * <p>May use {@code assessment}; never JavaFX, so that pictures need no display.
 */
package org.sagwise.picture;
