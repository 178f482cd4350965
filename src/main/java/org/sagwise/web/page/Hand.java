package org.sagwise.web.page;

import java.util.function.Consumer;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.run.RunState;
import org.sagwise.run.Work;
import org.sagwise.scenario.edit.Edit;

/** What a reader can do to the bench; every part of the page acts through this. */
interface Hand {

    void hold(boolean down);

    void choose(View.Choice choice);

    void draw(Drawing drawing);

    void speakOther();

    /** Shows everything anew. */
    void relay();

    /** Makes an edit; what is against it, as a sentence, or an empty text. */
    String edit(Edit edit);

    void cure(Offer offer);

    /**
     * Runs the bench down beside all else.
     *
     * @param heard hears how far it has come
     * @param ended called when it is over, before its end is shown
     * @return what calls it off
     */
    Work runDown(Consumer<RunState> heard, Runnable ended);

    /** Whether the bench is shown at a later moment than its start. */
    boolean hasTimePassed();

    /** Does anything else, then shows what has become of the bench and of all around it. */
    void change(Runnable deed);

    /** Does something with time, then shows what has become of the bench. */
    void time(Runnable deed);
}
