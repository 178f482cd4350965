package org.sagwise.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ShareText;

/** Whatever bytes a file holds, opening it ends in a scenario or in words. */
class ScenarioFuzz {

    static Stream<byte[]> demos() {
        return FixedInputs.of(
                DemoScenarios.names().stream().map(DemoScenarios::bytes).toList(), 2000);
    }

    @MethodSource("demos")
    @DictionaryFile(resourcePath = "/org/sagwise/fuzz/scenario.dict")
    @FuzzTest
    void scenario(byte[] file) {
        Effort.bounded(() -> open(file));
    }

    private static void open(byte[] file) {
        try {
            Answers.words(ShareText.readFileOrPost(new ByteArrayInputStream(file), Answers.READER));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
