package org.sagwise.caution;

import java.util.List;

/** Looks for one kind of hazard. */
public interface HazardRule {

    /** Every instance of this hazard in the evidence; empty if there is none. */
    List<Caution> check(Evidence evidence);
}
