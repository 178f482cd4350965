package org.sagwise.hazard;

import java.util.List;

/** Looks for one kind of hazard. */
public interface HazardRule {

    /** Every instance of this hazard on the bench; empty if there is none. */
    List<Caution> check(HazardContext context);
}
