package org.sagwise.lesson;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.LessonSource;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;

/** Lessons for tests: the built-in ones, and small ones from a text. */
public final class LessonFixture {

    public static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    /** One ideal cell of 4.2 V, a button and a coil of 1 Ω whose far end is free. */
    public static final String GAP = """
            {"sagwise": 1, "title": "gap", "parts": [
              {"id": "A", "kind": "cell", "charge": 1, "internal_mohm": 0,
               "capacity_mAh": 3000, "limit_A": 15},
              {"id": "fire", "kind": "switch", "closed_mohm": 0},
              {"id": "coil", "kind": "coil", "ohm": 1}],
             "links": [{"from": "A.+", "to": "fire.1", "ideal": true},
                       {"from": "fire.2", "to": "coil.1", "ideal": true}]}
            """;

    private LessonFixture() {}

    public static LessonReading read(String yaml) {
        return read(yaml, GAP);
    }

    /** A lesson beside which another bench lies under the name of the usual one. */
    static LessonReading read(String yaml, String bench) {
        Map<String, String> files = Map.of(LessonReader.FILE, yaml, "gap.sagwise.json", bench);
        return new LessonReader(CATALOGUE).read(new LessonSource() {
            @Override
            public String id() {
                return "test";
            }

            @Override
            public Optional<byte[]> file(String name) {
                return Optional.ofNullable(files.get(name)).map(it -> it.getBytes(StandardCharsets.UTF_8));
            }
        });
    }

    /** A lesson file of the tests. */
    public static String resource(String name) {
        try {
            return Files.readString(Path.of("src/test/resources/lessons", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Lesson builtIn(String id) {
        LessonReading reading = new LessonReader(CATALOGUE).read(LessonLibrary.source(id));
        return reading.lesson().orElseThrow(() -> new AssertionError(id + ": " + texts(reading.faults())));
    }

    public static List<String> texts(List<Finding> faults) {
        return faults.stream().map(fault -> fault.text(Locale.ENGLISH)).toList();
    }
}
