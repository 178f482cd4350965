package org.sagwise.app;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/**
 * A stream whose reader may stop early, as {@code head} does: what follows is dropped without a
 * word, since whoever stopped reading has what was wanted. Any other trouble, such as a full disk,
 * still is an error.
 */
final class ReaderStream extends OutputStream {

    private final OutputStream target;
    private boolean readerGone;

    ReaderStream(OutputStream target) {
        this.target = target;
    }

    @Override
    public void write(int oneByte) throws IOException {
        write(new byte[] {(byte) oneByte}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        if (readerGone) {
            return;
        }
        try {
            target.write(bytes, offset, length);
        } catch (IOException failure) {
            if (!isBrokenPipe(failure)) {
                throw failure;
            }
            readerGone = true;
        }
    }

    @Override
    public void flush() throws IOException {
        target.flush();
    }

    @Override
    public void close() throws IOException {
        target.close();
    }

    /** Java tells it by the system's words alone; all of them, in any language, name the pipe. */
    private static boolean isBrokenPipe(IOException failure) {
        String words = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
        return words.contains("pipe");
    }
}
