package org.sagwise.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;

/**
 * Whatever loads is solved, judged, cured, explained, laid out and shared. The bytes are no file
 * but choices: which demo, and what is changed in it; so most of what they say loads.
 */
class CircuitFuzz {

    private static final int CHOICES = 96;

    private static final List<String> DEMOS = DemoScenarios.names();

    static Stream<byte[]> choices() {
        return FixedInputs.of(
                IntStream.range(0, DEMOS.size()).mapToObj(CircuitFuzz::choice).toList(), 250);
    }

    private static byte[] choice(int demo) {
        byte[] bytes = new byte[CHOICES];
        new Random(demo).nextBytes(bytes);
        bytes[0] = (byte) ((2 * demo + 1) * 128 / DEMOS.size());
        return bytes;
    }

    @MethodSource("choices")
    @FuzzTest
    void circuit(byte[] choices) {
        ByteRandom chance = new ByteRandom(choices);
        byte[] demo = DemoScenarios.bytes(DEMOS.get(chance.nextInt(DEMOS.size())));
        byte[] spoilt = new Mutator(chance).json(demo);
        Answers.of(Answers.READER.read(spoilt));
    }
}
