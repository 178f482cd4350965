/** A JavaFX canvas painted through {@code java.awt.Graphics2D}. */
package org.sagwise.ui.canvas;
