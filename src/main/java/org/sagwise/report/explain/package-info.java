/**
 * Explains a scenario in words and numbers: as built, what is wrong in order of danger, the
 * numbers, what to do, and what the model leaves out.
 */
package org.sagwise.report.explain;
