package org.sagwise.cli;

import org.sagwise.plan.Measured;
import org.sagwise.scenario.Scenario;

/**
 * What came of readings, with all that is told about it.
 *
 * @param measured what follows from them
 * @param scenario the bench that gives them
 * @param isCellAssumed whether capacity or limit of the cell are usual ones that nobody gave
 */
record MeasuredReport(Measured measured, Scenario scenario, boolean isCellAssumed) {}
