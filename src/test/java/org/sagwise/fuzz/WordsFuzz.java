package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Scenario;
import org.sagwise.words.Complaint;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;

/** Whatever somebody types as a line of words ends in a bench that a file could hold, or in words with their place. */
class WordsFuzz {

    private static final Pattern EXAMPLES = Pattern.compile("```words\\n(.*?)```", Pattern.DOTALL);

    static Stream<byte[]> lines() {
        try {
            Matcher block = EXAMPLES.matcher(Files.readString(Path.of("docs/words.md")));
            List<byte[]> sound = block.results()
                    .flatMap(found -> found.group(1).lines())
                    .map(line -> line.getBytes(StandardCharsets.UTF_8))
                    .toList();
            return FixedInputs.of(sound, 2000);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @MethodSource("lines")
    @FuzzTest
    void words(byte[] bytes) {
        String line = new String(bytes, StandardCharsets.UTF_8);
        Effort.bounded(() -> read(line));
    }

    private static void read(String line) {
        WordsBench answer = TradeWords.read(line, Answers.CATALOGUE, Locale.ENGLISH);
        answer.scenario().ifPresent(WordsFuzz::sound);
        if (answer instanceof WordsBench.Refused refused) {
            assertFalse(refused.complaints().isEmpty());
            refused.complaints().forEach(complaint -> told(complaint, line));
        }
    }

    private static void told(Complaint complaint, String line) {
        assertFalse(complaint.text(Locale.ENGLISH).isBlank());
        assertFalse(complaint.text(Locale.GERMAN).isBlank());
        assertTrue(complaint.span().start() <= complaint.span().end());
        assertTrue(complaint.span().end() <= line.length());
    }

    private static void sound(Scenario bench) {
        byte[] file = ScenarioWriter.write(bench).getBytes(StandardCharsets.UTF_8);
        assertEquals(bench, Answers.READER.read(file).scenario().orElseThrow());
        TradeWords.write(bench, Answers.CATALOGUE, Locale.GERMAN);
    }
}
