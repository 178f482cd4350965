package org.sagwise.fuzz;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a fuzz target is tried with in every build: sound inputs, and so many spoilt ones, the same
 * each time. The fuzzer itself takes the sound ones alone, and goes on from there by what it reaches.
 */
final class FixedInputs {

    private FixedInputs() {}

    static Stream<byte[]> of(List<byte[]> sound, int spoilt) {
        return Effort.isCounted()
                ? sound.stream()
                : Stream.concat(sound.stream(), IntStream.range(0, spoilt).mapToObj(seed -> spoilt(sound, seed)));
    }

    private static byte[] spoilt(List<byte[]> sound, int seed) {
        Random random = new Random(seed);
        return new Mutator(random).bytes(sound.get(random.nextInt(sound.size())));
    }
}
