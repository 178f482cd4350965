package org.sagwise.caution.fix;

import org.sagwise.caution.Assessment;
import org.sagwise.caution.Caution;

/**
 * A cure that was tried and holds.
 *
 * @param caution what it cures
 * @param fix the edit
 * @param after what there is to say about the bench once it is made
 */
public record Offer(Caution caution, Fix fix, Assessment after) {}
