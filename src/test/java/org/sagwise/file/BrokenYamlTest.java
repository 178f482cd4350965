package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.scenario.Finding;

/** Slips that authors make in a lesson file, and what they are told about them. */
class BrokenYamlTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``                     | EMPTY         | -",
                "`a: 1\\n---\\nb: 2`     | SECOND        | 2:1",
                "`? [a, b]\\n: c`       | KEY           | 1:3",
                "`a: 1\\n\\tb: 2`        | TAB           | 2:1",
                "`a: \"open\\nb: 2`      | QUOTE         | 2:5",
                "`a: [1, 2\\nb: 3`      | BRACKET       | 2:2",
                "`text: so: it is`      | COLON_IN_TEXT | 1:9",
                "`a: 1\\nb\\nc: 3`       | MISSING_COLON | 3:1",
                "`a:\\n  - 1\\n b: 2`     | INDENT        | 3:2",
                "`a: @home`             | SIGN          | 1:4"
            })
    void read_aSlip_isToldAtItsPlace(String text, YamlFault fault, String position) {
        Finding found = YamlDocument.read(text.replace("\\n", "\n").replace("\\t", "\t"))
                .findings()
                .get(0);

        assertEquals(fault.finding().details().get(0), found.details().get(0), found.text(Locale.ENGLISH));
        assertEquals(position, found.position().map(Object::toString).orElse("-"));
    }

    @ParameterizedTest
    @EnumSource(YamlFault.class)
    void sentence_ofEachSlip_isThereInBothLanguages(YamlFault fault) {
        Finding found = fault.finding("}");

        assertFalse(found.sentence(Locale.ENGLISH).isBlank());
        assertFalse(found.sentence(Locale.GERMAN).contains("{"), found.sentence(Locale.GERMAN));
    }
}
