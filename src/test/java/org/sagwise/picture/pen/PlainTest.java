package org.sagwise.picture.pen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PlainTest {

    @Test
    void text_printable_isKept() {
        String text = "Zelle «A» › 3,80\u202fV − ″ Ωß é \uD83D\uDD0B";
        assertEquals(text, Plain.text(text));
    }

    @Test
    void text_lineBreaksAndTabs_becomeSpaces() {
        assertEquals("a b c d", Plain.text("a\nb\tc\u2028d"));
    }

    /** Marks that turn the direction of text could make a picture say another thing than its scenario. */
    @Test
    void text_unseenCharacters_becomeAMark() {
        for (String unseen :
                new String[] {"\u0007", "\u009B", "\u00AD", "\u200F", "\u202E", "\u2066", "\uFEFF", "\uD800", "\uFFFE"
                }) {
            assertEquals("a\uFFFDb", Plain.text("a" + unseen + "b"));
        }
    }
}
