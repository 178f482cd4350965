package org.sagwise.ui.share;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.scenario.Scenario;

/** Writes live pages. Handed in, since the window knows nothing of browsers. */
public interface LivePages {

    /** A program that has no script for pages. */
    LivePages NONE = new LivePages() {
        @Override
        public boolean isHere() {
            return false;
        }

        @Override
        public Optional<String> write(Scenario scenario, Locale locale) {
            return Optional.empty();
        }
    };

    /** Whether the script is here that runs in a page. */
    boolean isHere();

    /** The page as HTML, which may take a second or two; empty if the script has gone. */
    Optional<String> write(Scenario scenario, Locale locale);
}
