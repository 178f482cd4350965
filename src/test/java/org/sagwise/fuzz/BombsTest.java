package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.Loaded;
import org.sagwise.file.ShareText;

/**
 * Files that are small to send and large to read, as files and as share texts. Time is the
 * processor's, memory is counted: a busy machine changes neither.
 */
class BombsTest {

    /** As much as a file may have, but for a little. */
    private static final int LARGE = 8 * 1024 * 1024 - 64;

    private record Bomb(String name, String head, String piece, String tail) {

        byte[] bytes() {
            int times = (LARGE - head.length() - tail.length()) / piece.length();
            return (head + piece.repeat(times) + tail).getBytes(StandardCharsets.US_ASCII);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Bomb> bombs() {
        return List.of(
                new Bomb("zeros", "", "\0", ""),
                new Bomb("spaces", "{", " ", "}"),
                new Bomb("brackets", "", "[", ""),
                new Bomb("nested objects", "", "{\"x\":", ""),
                new Bomb("one long text", "{\"title\":\"", "a", "\"}"),
                new Bomb("escapes", "{\"title\":\"", "\\u0041", "\"}"),
                new Bomb("one long number", "{\"ambient_C\":", "9", "}"),
                new Bomb("the same key", "{", "\"a\":1,", "\"b\":1}"),
                new Bomb("empty objects", "{\"sagwise\":1,\"parts\":[{}", ",{}", "]}"),
                new Bomb("empty lists of others", "{\"sagwise\":1,\"x\":[[]", ",[]", "]}"),
                new Bomb("numbers of others", "{\"sagwise\":1,\"x\":[0", ",1", "]}"),
                new Bomb("cells", "{\"sagwise\":1,\"parts\":[{}", ",{\"kind\":\"cell\"}", "]}"),
                new Bomb("links", "{\"sagwise\":1,\"links\":[{}", ",{\"from\":\"A.+\"}", "]}"));
    }

    @ParameterizedTest
    @MethodSource("bombs")
    void file_thatIsLarge_isAnsweredWithinTheBounds(Bomb bomb) {
        byte[] file = bomb.bytes();

        withinTheBounds(() -> Answers.READER.read(file));
    }

    @ParameterizedTest
    @MethodSource("bombs")
    void shareText_thatSwells_isAnsweredWithinTheBounds(Bomb bomb) {
        String text = Sealed.sealed(Sealed.deflated(bomb.bytes()));
        assertTrue(text.length() < ShareText.MOST_CHARACTERS, "sent as one share text");

        withinTheBounds(() -> ShareText.read(text, Answers.READER));
    }

    private static void withinTheBounds(Supplier<Loaded> read) {
        Effort.bounded(() -> Memory.bounded(() -> Answers.words(read.get())));
    }

    @Test
    void shareText_thatSwellsBeyondAFile_isNotUnpacked() {
        byte[] swollen = new byte[40 * 1024 * 1024];
        String text = Sealed.sealed(Sealed.deflated(swollen));

        Memory.bounded(() -> {
            Loaded loaded = ShareText.read(text, Answers.READER);
            assertTrue(loaded.scenario().isEmpty());
        });
    }
}
