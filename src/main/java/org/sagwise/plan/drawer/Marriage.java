package org.sagwise.plan.drawer;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That a cell belongs to a set which is used, charged and rested together, and never apart.
 *
 * @param set what the set is called
 * @param since the day from which on, if it is known
 */
public record Marriage(String set, Optional<LocalDate> since) {}
