package org.sagwise.plan.drawer;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That a cell is used no more.
 *
 * @param on the day from which on, if it is known
 * @param why in a person's own words; may be empty
 */
public record Retirement(Optional<LocalDate> on, String why) {}
