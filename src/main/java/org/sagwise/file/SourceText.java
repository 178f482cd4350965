package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.text.Position;

/**
 * The text of a file: UTF-8, of limited size, without the byte order mark that some editors put in
 * front.
 *
 * @param text the text, empty if there is a problem
 * @param problem why there is no text
 */
record SourceText(String text, Optional<Finding> problem) {

    /** Most bytes that a scenario file may have: 8 MiB. */
    static final int MOST_BYTES = 8 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\ufeff';

    /** Reads as much of a stream as a scenario may have, and no more than one byte beyond. */
    static SourceText read(InputStream stream) throws IOException {
        return of(stream.readNBytes(MOST_BYTES + 1));
    }

    static SourceText of(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            String mebibytes = String.valueOf(MOST_BYTES / 1024 / 1024);
            return refused(Finding.of("", Problem.TOO_LARGE, mebibytes));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
        chars.flip();
        String text = chars.toString();
        if (result.isError()) {
            return refused(Finding.of("", Problem.NOT_UTF8).at(Optional.of(endOf(text))));
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return new SourceText(marked ? text.substring(1) : text, Optional.empty());
    }

    private static SourceText refused(Finding problem) {
        return new SourceText("", Optional.of(problem));
    }

    private static Position endOf(String text) {
        int lines = (int) text.chars().filter(c -> c == '\n').count();
        return new Position(lines + 1, text.length() - text.lastIndexOf('\n'));
    }
}
