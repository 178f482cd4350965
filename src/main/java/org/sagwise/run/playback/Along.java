package org.sagwise.run.playback;

import org.sagwise.run.RunState;

/** What goes along with time on a bench. */
public interface Along {

    /** Nothing does. */
    Along NOTHING = (from, slice) -> () -> {};

    /**
     * Goes along behind the scenes.
     *
     * @param from where the bench was before
     * @param slice what a little time brought it
     * @return what is to be shown in front, together with the bench
     */
    Runnable go(RunState from, Slice slice);
}
