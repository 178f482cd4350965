package org.sagwise.hazard;

import java.util.List;

/**
 * Hazards of one field, as docs/hazards.md gathers them.
 *
 * @param title what they have in common, in English
 * @param hazards in the order in which they are listed
 */
record Section(String title, List<Hazard> hazards) {}
