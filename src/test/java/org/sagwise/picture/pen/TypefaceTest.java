package org.sagwise.picture.pen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.picture.pen.Typeface.Weight;

class TypefaceTest {

    /** Against the font itself, as the reader of another library has it. */
    @ParameterizedTest
    @EnumSource(Weight.class)
    void widths_ofEveryLetter_areThoseOfTheFont(Weight weight) throws IOException {
        String name = weight == Weight.BOLD ? "Bold" : "Regular";
        try (InputStream file =
                Typeface.class.getResourceAsStream("/org/sagwise/fonts/SourceSans3-" + name + ".widths")) {
            String kept = new String(file.readAllBytes(), StandardCharsets.US_ASCII);
            assertEquals(FontWidths.of(weight), kept, "run FontWidths to make the file anew");
        }
    }

    /** In units of a thousandth: a is 504 wide, Ω 678, what is missing 653 (the font's tables). */
    @Test
    void width_ofText_isTheSumOfItsLetters() {
        assertEquals(504 + 678, Typeface.width("aΩ", Weight.REGULAR, 1000), 1e-9);
        assertEquals(653, Typeface.width("\u4E00", Weight.REGULAR, 1000), 1e-9);
        assertEquals(653, Typeface.width("\uD83D\uDD0B", Weight.REGULAR, 1000), 1e-9, "a letter of two chars");
    }
}
