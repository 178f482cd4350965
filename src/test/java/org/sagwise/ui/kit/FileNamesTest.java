package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.ui.text.Wording;

class FileNamesTest {

    private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
    private static final Wording GERMAN = Wording.in(Locale.GERMAN);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Zwei Zellen nebeneinander | zwei-zellen-nebeneinander",
                "Übergröße: 2 Zellen, 0,5 Ω! | übergröße-2-zellen-0,5-ohm",
                "../../etc/passwd | etc-passwd",
                "C:\\a\\b.json | c-a-b-json",
                "--force | force",
                "..1.5..2 | 1.5-2",
                "Con | werkbank-con",
            })
    void of_aTitle_areItsWordsAndNothingThatASystemReadsAsMore(String title, String name) {
        assertEquals(name, FileNames.of(title, GERMAN));
    }

    @Test
    void of_lettersWithTheirMarksApart_isTheNameThatOthersTypeInOne() {
        assertEquals("größe", FileNames.of("Gro\u0308ße", GERMAN));
    }

    @ParameterizedTest
    @CsvSource({"''", "' '", "'?!'"})
    void of_noTitle_isAWordOfTheLanguage(String title) {
        assertEquals("bench", FileNames.of(title, ENGLISH));
        assertEquals("werkbank", FileNames.of(title, GERMAN));
    }

    @Test
    void of_aLongTitle_endsWithAWholeWord() {
        String name = FileNames.of("three cells of the yard ".repeat(50), ENGLISH);
        assertTrue(name.length() <= 60 && name.length() > 40, name);
        assertTrue(name.matches("(three|cells|of|the|yard)(-(three|cells|of|the|yard))*"), name);
        assertEquals(60, FileNames.of("x".repeat(5_000), ENGLISH).length());
    }
}
