package org.sagwise.app;

import java.util.logging.LogRecord;
import java.util.logging.Logger;

/**
 * Keeps one notice of JavaFX from the user: that it was loaded from the class path.
 *
 * <p>It is harmless (see docs/decisions), it would stand in every terminal, and there is no switch
 * for it. Everything else that JavaFX has to say still gets through.
 */
final class ClassPathNotice {

    /** Held so that the logging system cannot drop the logger together with its filter. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private ClassPathNotice() {}

    static void keepQuiet() {
        JAVAFX.setFilter(notice -> !isTheNotice(notice));
    }

    static boolean isTheNotice(LogRecord notice) {
        return String.valueOf(notice.getMessage())
                .startsWith("Unsupported JavaFX configuration: classes were loaded from");
    }
}
