package org.sagwise.ui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

    @ParameterizedTest
    @CsvSource({
        "Mac OS X, Keep it (Ctrl+Enter), Keep it (Cmd+Enter)",
        "Mac OS X, zwei (mit Strg), zwei (mit Cmd)",
        "Linux, Keep it (Ctrl+Enter), Keep it (Ctrl+Enter)",
        "Windows 11, zwei (mit Strg), zwei (mit Strg)"
    })
    void forKeysOf_aMac_namesTheCommandKey(String system, String sentence, String shown) {
        assertEquals(shown, Wording.forKeysOf(system, sentence));
    }
}
