package org.sagwise.file;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/** Packs bytes by deflate (RFC 1951), and unpacks them with a limit on what may come out. */
final class Deflated {

    private static final int CHUNK = 8192;

    private Deflated() {}

    /**
     * What came of unpacking.
     *
     * @param bytes the bytes; empty if there are none to be had
     * @param isTooLarge whether more would have come out than was allowed
     */
    record Unpacked(Optional<byte[]> bytes, boolean isTooLarge) {}

    static byte[] pack(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        try {
            deflater.setInput(bytes);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] chunk = new byte[CHUNK];
            while (!deflater.finished()) {
                out.write(chunk, 0, deflater.deflate(chunk));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    /**
     * Unpacks at most so many bytes: beyond that it stops and drops what it had. Bytes that end
     * early, go on behind the end or are no deflated bytes at all give nothing.
     */
    static Unpacked unpack(byte[] packed, int most) {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(packed);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] chunk = new byte[CHUNK];
            while (!inflater.finished()) {
                int count = inflater.inflate(chunk);
                if (count == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    return nothing();
                }
                if (out.size() + count > most) {
                    return new Unpacked(Optional.empty(), true);
                }
                out.write(chunk, 0, count);
            }
            return inflater.getRemaining() > 0 ? nothing() : new Unpacked(Optional.of(out.toByteArray()), false);
        } catch (DataFormatException broken) {
            return nothing();
        } finally {
            inflater.end();
        }
    }

    private static Unpacked nothing() {
        return new Unpacked(Optional.empty(), false);
    }
}
