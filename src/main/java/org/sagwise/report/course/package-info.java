/** The course of a run in words and curves, whoever shows it: how a clock is read, why it stopped, what has curves. */
package org.sagwise.report.course;
