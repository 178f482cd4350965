package org.sagwise.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PrintableTest {

    private static final Set<Integer> WITHOUT_SHAPE = Set.of(
            (int) Character.CONTROL,
            (int) Character.FORMAT,
            (int) Character.LINE_SEPARATOR,
            (int) Character.PARAGRAPH_SEPARATOR,
            (int) Character.SURROGATE);

    @Test
    void isOrdinary_ofNoSignThatUnicodeSaysSteers() {
        IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                .filter(sign -> WITHOUT_SHAPE.contains(Character.getType(sign)))
                .forEach(sign -> {
                    assertFalse(Printable.isOrdinary(sign), Integer.toHexString(sign));
                    assertTrue(Printable.steers(sign), Integer.toHexString(sign));
                });
    }

    @Test
    void isOrdinary_ofWhatWePrint() {
        "Zelle Ä–Ω, 30 µm² × 4.20 V → “10 °C” … ≈ −5 ½"
                .chars()
                .forEach(sign -> assertTrue(Printable.isOrdinary(sign), Integer.toHexString(sign)));
    }

    @Test
    void print_ordinaryText_isTheSame_elseWithQuestionMarks() {
        String text = "17.6 W at 0.30 Ω";
        assertSame(text, Printable.print(text));
        assertEquals("a?b\tc\n\ud83d\udd0b?", Printable.print("a\u202eb\tc\n\ud83d\udd0b\ufffe"));
    }
}
