package org.sagwise.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonSource;

/** Whatever a lesson's file holds, reading and trying it out ends in a lesson or in words. */
class LessonFuzz {

    private static final LessonReader READER = new LessonReader(Answers.CATALOGUE);

    /** Whose benches the spoilt lesson may name. */
    private static final LessonSource BENCHES = LessonLibrary.source("06-same-watts");

    static Stream<byte[]> lessons() {
        return FixedInputs.of(LessonLibrary.ids().stream().map(LessonFuzz::file).toList(), 1000);
    }

    private static byte[] file(String id) {
        try {
            return LessonLibrary.source(id).file(LessonReader.FILE).orElseThrow();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @MethodSource("lessons")
    @DictionaryFile(resourcePath = "/org/sagwise/fuzz/lesson.dict")
    @FuzzTest
    void lesson(byte[] file) {
        Effort.bounded(() -> Answers.of(READER.read(holding(file))));
    }

    static LessonSource holding(byte[] file) {
        return new LessonSource() {
            @Override
            public String id() {
                return BENCHES.id();
            }

            @Override
            public Optional<byte[]> file(String name) throws IOException {
                return name.equals(LessonReader.FILE) ? Optional.of(file) : BENCHES.file(name);
            }
        };
    }
}
