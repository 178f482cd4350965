package org.sagwise.ui.demo;

import org.sagwise.scenario.Scenario;

/**
 * A bench that comes with the program, to try.
 *
 * @param name its file's name without the ending
 * @param scenario the bench
 */
public record Example(String name, Scenario scenario) {}
