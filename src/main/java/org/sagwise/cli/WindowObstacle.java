package org.sagwise.cli;

import java.util.Locale;
import org.sagwise.text.Texts;

/** What keeps a machine from showing a window, and what to do about it. */
public enum WindowObstacle {
    /** No X11 server to draw on: a bare server, or a {@code DISPLAY} that nobody answers. */
    NO_DISPLAY,
    /** The libraries that JavaFX draws with on Linux are not installed. */
    NO_LIBRARIES;

    /** What is wrong and what to install or start, in words for the person at the keyboard. */
    public String text(Locale locale) {
        return Texts.in("window", locale).say("obstacle." + name());
    }
}
