/**
 * Paints the staircase: potential as height along the way of the current, with lanes for what
 * stands side by side and a lens for the small steps.
 */
package org.sagwise.picture.stairs;
