package org.sagwise.web.page;

import org.sagwise.assessment.fix.Offer;
import org.sagwise.scenario.edit.Edit;

/** What a reader can do to the bench; every part of the page acts through this. */
interface Hand {

    void hold(boolean down);

    void choose(View.Choice choice);

    /** Makes an edit; what is against it, as a sentence, or an empty text. */
    String edit(Edit edit);

    void cure(Offer offer);

    /** Does something with time, then shows what has become of the bench. */
    void time(Runnable deed);
}
