package org.sagwise.plan.vary;

import org.sagwise.hazard.Caution;

/**
 * From where to where a caution holds while a value changes, in numbers as the file writes them.
 *
 * @param caution as it stands where it first holds
 * @param from where it begins; the end of the range where it holds there already
 * @param to where it ends
 * @param beginsWithin whether it begins within the range
 * @param endsWithin whether it ends within the range
 */
public record CautionSpan(Caution caution, double from, double to, boolean beginsWithin, boolean endsWithin) {}
