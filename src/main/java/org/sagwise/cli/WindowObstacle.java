package org.sagwise.cli;

import java.util.Locale;
import java.util.ResourceBundle;

/** What keeps a machine from showing a window, and what to do about it. */
public enum WindowObstacle {
    /** No X11 server to draw on: a bare server, or a {@code DISPLAY} that nobody answers. */
    NO_DISPLAY,
    /** The libraries that JavaFX draws with on Linux are not installed. */
    NO_LIBRARIES;

    /**
     * Without it, English asked for on a German desktop gets German: English is the root bundle.
     */
    private static final ResourceBundle.Control NO_THIRD_LANGUAGE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /** What is wrong and what to install or start, in words for the person at the keyboard. */
    public String text(Locale locale) {
        return ResourceBundle.getBundle("org.sagwise.texts.window", locale, NO_THIRD_LANGUAGE)
                .getString("obstacle." + name());
    }
}
