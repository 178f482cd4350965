package org.sagwise.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.sagwise.file.ShareText;

/** Share texts as a hostile hand would make them: the checksum is right, and what it covers not. */
final class Sealed {

    private Sealed() {}

    static byte[] deflated(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater =
                new DeflaterOutputStream(out, new Deflater(Deflater.DEFAULT_COMPRESSION, true))) {
            deflater.write(bytes);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    static String sealed(byte[] packed) {
        CRC32 sum = new CRC32();
        sum.update(packed);
        return ShareText.BEGINNING
                + Base64.getUrlEncoder().withoutPadding().encodeToString(packed)
                + String.format(".%08x", sum.getValue());
    }
}
