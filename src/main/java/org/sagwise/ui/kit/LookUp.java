package org.sagwise.ui.kit;

import javafx.event.Event;
import javafx.event.EventType;

/** Somebody wants to know what a word means: goes up to the window, which shows the glossary. */
public final class LookUp extends Event {

    public static final EventType<LookUp> WORD = new EventType<>(Event.ANY, "LOOK_UP");

    private static final long serialVersionUID = 1;

    private final String id;

    /**
     * @param id key of the glossary's entry
     */
    public LookUp(String id) {
        super(WORD);
        this.id = id;
    }

    public String id() {
        return id;
    }
}
