/** Pens for what is written to files: pixels and pages through Java 2D, and SVG. */
package org.sagwise.report.pen;
