package org.sagwise.ui.kit;

import javafx.event.ActionEvent;

/** Somebody wants to know what a word means: goes up to the window, which shows the glossary. */
public final class LookUp extends ActionEvent {

    private static final long serialVersionUID = 1;

    private final String id;

    /**
     * @param id key of the glossary's entry
     */
    public LookUp(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
