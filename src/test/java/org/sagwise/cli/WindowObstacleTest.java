package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WindowObstacleTest {

    @ParameterizedTest
    @EnumSource
    void text_everyObstacle_isWordedInBothLanguages(WindowObstacle obstacle) {
        String english = obstacle.text(Locale.ENGLISH);
        String german = obstacle.text(Locale.GERMAN);

        assertNotEquals(english, german);
        assertTrue(german.contains("Fenster"), german);
    }

    @ParameterizedTest
    @EnumSource(names = "NO_LIBRARIES")
    void text_missingLibraries_saysWhatToInstall(WindowObstacle obstacle) {
        assertTrue(obstacle.text(Locale.ENGLISH).contains("apt install libgtk-3-0"));
    }

    @Test
    void text_englishOnAGermanDesktop_staysEnglish() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertTrue(WindowObstacle.NO_DISPLAY.text(Locale.ENGLISH).contains("window"));
        } finally {
            Locale.setDefault(before);
        }
    }
}
