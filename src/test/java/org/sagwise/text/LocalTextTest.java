package org.sagwise.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LocalTextTest {

    @Test
    void in_aLanguageThatTheTextLacks_isEnglish() {
        LocalText text = new LocalText(Map.of("en", "cell", "de", "Zelle"));

        assertEquals("Zelle", text.in(Locale.GERMANY));
        assertEquals("cell", text.in(Locale.ENGLISH));
        assertEquals("cell", text.in(Locale.FRENCH));
    }

    @Test
    void text_withoutEnglishOrWords_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LocalText(Map.of("de", "Zelle")));
        assertThrows(IllegalArgumentException.class, () -> new LocalText(Map.of("en", "cell", "de", " ")));
    }

    @Test
    void languages_theList_beginsWithEnglishAndNeedsBoth() {
        assertEquals(List.of("en", "de"), Languages.all());
        assertEquals(List.of("en", "de"), Languages.needed());
    }
}
