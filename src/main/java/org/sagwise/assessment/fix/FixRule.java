package org.sagwise.assessment.fix;

import java.util.List;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;

/** Knows a kind of cure. What it proposes is tried before anybody sees it. */
interface FixRule {

    /** Edits that may cure a caution of this bench; none where it knows none. */
    List<Fix> fixes(Assessment assessment, Caution caution);
}
