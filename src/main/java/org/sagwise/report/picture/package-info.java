/** Writes pictures of a bench as PNG, SVG and PDF, with no display. */
package org.sagwise.report.picture;
