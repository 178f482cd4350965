package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;

/**
 * Resistances that the table of keys allows, above nothing and far below what anything has: volts
 * across one were once a current without end.
 */
class TinyResistanceTest {

    private static final Pattern OHMS = Pattern.compile("\"[a-z_]*ohm\": ([0-9.]+)");

    private static final List<String> TINY = List.of("1e-7", "1e-20", "1e-300");

    static List<String> demos() {
        return DemoScenarios.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demo_withAnyResistanceTiny_isComputedAndExplained(String demo) {
        String text = new String(DemoScenarios.bytes(demo), StandardCharsets.UTF_8);
        variants(text).forEach(TinyResistanceTest::isAnswered);
    }

    /** Each resistance alone is one of the tiny ones by turns; all of them together are each of these. */
    private static List<String> variants(String text) {
        List<String> variants = new ArrayList<>();
        Matcher found = OHMS.matcher(text);
        while (found.find()) {
            String tiny = TINY.get(variants.size() % TINY.size());
            variants.add(text.substring(0, found.start(1)) + tiny + text.substring(found.end(1)));
        }
        for (String tiny : TINY) {
            variants.add(found.replaceAll(match -> match.group().replace(match.group(1), tiny)));
        }
        return variants;
    }

    private static void isAnswered(String text) {
        Loaded loaded = Answers.READER.read(text.getBytes(StandardCharsets.UTF_8));
        assertTrue(loaded.scenario().isPresent(), text);
        Answers.of(loaded);
    }
}
