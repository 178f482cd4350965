/** Plots of curves: scales, thinning and their painter. */
package org.sagwise.picture.plot;
