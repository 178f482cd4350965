package org.sagwise.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrapTest {

    @Test
    void lines_ofAWidth_breakBetweenWordsAndKeepIndents() {
        assertEquals(List.of("- one two", "  three"), Wrap.lines(" one  two\nthree ", "- ", "  ", 9));
    }

    @Test
    void lines_aWordThatDoesNotFit_standsAlone() {
        assertEquals(List.of("a", "longword", "b"), Wrap.lines("a longword b", line -> line.length() <= 4));
    }

    @Test
    void lines_aNumberBoundToItsUnit_stayTogether() {
        assertEquals(List.of("some", "12\u00a0V"), Wrap.lines("some 12\u00a0V", "", "", 7));
    }

    @Test
    void lines_noText_isOneEmptyLine() {
        assertEquals(List.of(""), Wrap.lines("", "", "", 7));
    }
}
