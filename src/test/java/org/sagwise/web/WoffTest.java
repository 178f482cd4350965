package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.junit.jupiter.api.Test;
import org.sagwise.picture.pen.Typeface;

/** Read back as the W3C's "WOFF File Format 1.0" (2012), sections 3 to 5, says. */
class WoffTest {

    @Test
    void of_ourTypeface_hasTheSameTablesInLessRoom() throws IOException, DataFormatException {
        byte[] font;
        try (InputStream file = Typeface.file(Typeface.Weight.BOLD)) {
            font = file.readAllBytes();
        }
        byte[] packed = Woff.of(font);
        ByteBuffer from = ByteBuffer.wrap(font);
        ByteBuffer woff = ByteBuffer.wrap(packed);

        assertEquals("wOFF", new String(packed, 0, 4, StandardCharsets.US_ASCII));
        assertEquals(packed.length, woff.getInt(8));
        assertTrue(packed.length < 0.7 * font.length);
        assertEquals(from.getShort(4), woff.getShort(12));
        for (int i = 0; i < from.getShort(4); i++) {
            int own = 44 + 20 * i;
            int its = 12 + 16 * i;
            assertEquals(from.getInt(its), woff.getInt(own), "tag");
            assertEquals(0, woff.getInt(own + 4) % 4, "tables begin at multiples of four");
            int length = woff.getInt(own + 12);
            assertArrayEquals(
                    Arrays.copyOfRange(font, from.getInt(its + 8), from.getInt(its + 8) + from.getInt(its + 12)),
                    table(packed, woff.getInt(own + 4), woff.getInt(own + 8), length));
        }
    }

    private static byte[] table(byte[] packed, int offset, int size, int length) throws DataFormatException {
        if (size == length) {
            return Arrays.copyOfRange(packed, offset, offset + length);
        }
        byte[] table = new byte[length];
        Inflater inflater = new Inflater();
        inflater.setInput(packed, offset, size);
        assertEquals(length, inflater.inflate(table));
        assertTrue(inflater.finished());
        inflater.end();
        return table;
    }
}
