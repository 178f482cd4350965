package org.sagwise.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;

class ClassPathNoticeTest {

    private static final String NOTICE =
            "Unsupported JavaFX configuration: classes were loaded from 'unnamed module @69eee410'";

    @Test
    void isTheNotice_theNoticeItself_isRecognised() {
        assertTrue(ClassPathNotice.isTheNotice(new LogRecord(Level.WARNING, NOTICE)));
    }

    @Test
    void isTheNotice_anyOtherWarning_getsThrough() {
        assertFalse(ClassPathNotice.isTheNotice(new LogRecord(Level.WARNING, "Could not find stylesheet: felt.css")));
        assertFalse(ClassPathNotice.isTheNotice(new LogRecord(Level.WARNING, null)));
    }

    @Test
    void keepQuiet_calledTwice_leavesAFilterThatStopsTheNoticeOnly() {
        ClassPathNotice.keepQuiet();
        ClassPathNotice.keepQuiet();

        var filter = Logger.getLogger("javafx").getFilter();

        assertFalse(filter.isLoggable(new LogRecord(Level.WARNING, NOTICE)));
        assertTrue(filter.isLoggable(new LogRecord(Level.SEVERE, "No fonts")));
    }
}
