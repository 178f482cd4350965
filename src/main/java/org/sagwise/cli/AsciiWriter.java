package org.sagwise.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import org.sagwise.text.Printable;
import org.sagwise.text.Signs;

/** Lets only ASCII through and writes other signs in letters. */
final class AsciiWriter extends FilterWriter {

    AsciiWriter(Writer target) {
        super(target);
    }

    @Override
    public void write(int sign) throws IOException {
        if (sign < 0x80) {
            out.write(sign);
        } else {
            out.write(Printable.line(Character.toString(sign), Signs.ASCII));
        }
    }

    @Override
    public void write(char[] signs, int from, int length) throws IOException {
        write(new String(signs, from, length), 0, length);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        for (int i = from; i < from + length; i++) {
            write(text.charAt(i));
        }
    }
}
