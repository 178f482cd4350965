/**
 * What people write when something does not work as it should, matched to what the numbers of a bench show: each
 * symptom with its usual causes, each cause with how it is seen in the numbers and how it is found with a meter.
 */
package org.sagwise.report.symptom;
