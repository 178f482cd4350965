/**
 * Compares two scenarios: which part stands for which, whatever they are called, what differs in
 * build, and what differs in outcome.
 */
package org.sagwise.report.compare;
