package org.sagwise.app;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import org.junit.jupiter.api.Test;

class ReaderStreamTest {

    /** Fails at every write, as a stream does whose other end is gone. */
    private static final class Failing extends OutputStream {

        private final String words;
        private int tries;

        Failing(String words) {
            this.words = words;
        }

        @Override
        public void write(int oneByte) throws IOException {
            tries++;
            throw new IOException(words);
        }
    }

    @Test
    void write_whereTheReaderStopped_dropsTheRestQuietly() {
        Failing pipe = new Failing("Broken pipe");
        ReaderStream stream = new ReaderStream(pipe);
        assertDoesNotThrow(() -> stream.write(new byte[3]));
        assertDoesNotThrow(() -> stream.write(7));
        assertEquals(1, pipe.tries, "nothing more is tried once the reader is gone");
    }

    @Test
    void write_onAFullDisk_fails() {
        ReaderStream stream = new ReaderStream(new Failing("No space left on device"));
        assertThrows(IOException.class, () -> stream.write(new byte[3]));
    }
}
