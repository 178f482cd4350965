package org.sagwise.hazard;

import java.util.List;

/** Looks for one kind of hazard. */
interface HazardRule {

    /** A caution for every instance on the bench, still without the id of the hazard; empty if there is none. */
    List<CautionBuilder> check(HazardContext context);
}
