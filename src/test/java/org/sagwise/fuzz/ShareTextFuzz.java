package org.sagwise.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ShareText;

/**
 * Whatever somebody pastes, and whatever hides behind a checksum that is right, ends in a scenario
 * or in words.
 */
class ShareTextFuzz {

    static Stream<byte[]> posts() {
        Stream<byte[]> sound = Stream.concat(
                DemoScenarios.names().stream()
                        .map(DemoScenarios::bytes)
                        .map(demo -> Sealed.sealed(Sealed.deflated(demo)))
                        .map(text -> ("Look: " + text + "!").getBytes(StandardCharsets.US_ASCII)),
                DemoScenarios.names().stream().map(DemoScenarios::bytes).map(Sealed::deflated));
        return FixedInputs.of(sound.toList(), 2000);
    }

    @MethodSource("posts")
    @FuzzTest
    void shareText(byte[] bytes) {
        String post = new String(bytes, StandardCharsets.UTF_8);
        Effort.bounded(() -> Answers.words(ShareText.read(post, Answers.READER)));
        String sealed = Sealed.sealed(bytes);
        Effort.bounded(() -> Answers.words(ShareText.read(sealed, Answers.READER)));
    }
}
