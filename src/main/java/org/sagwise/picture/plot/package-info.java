/** Plots: curves, bands, limits, points and fields over axes, and the painter of them all. */
package org.sagwise.picture.plot;
