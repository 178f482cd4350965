package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.LessonReading;

/** Whatever a lesson file holds, the answer is a lesson or words. */
class LessonReaderProperties {

    private static final List<String> FILES =
            List.of(LessonFixture.resource("sound.yaml"), LessonFixture.resource("mistakes.yaml"));

    private static final List<String> PIECES = List.of(
            "",
            " ",
            "\n",
            ":",
            "- ",
            "[",
            "]",
            "{",
            "}",
            "\"",
            "'",
            "&a ",
            "*a",
            "!x ",
            "#",
            "|",
            "\t",
            "-1",
            "1e400",
            "NaN",
            "true",
            "coil.1",
            "A.+",
            "{coil.power_W}",
            "held",
            "set: A, kind: coil",
            "turn: A",
            "remove: coil",
            "add: A, kind: cell",
            "\u0000",
            "\ud83d",
            "ä",
            "free: fire");

    @Property(tries = 400)
    void read_spoiltFile_isALessonOrWords(@ForAll Random random) {
        StringBuilder text = new StringBuilder(FILES.get(random.nextInt(FILES.size())));
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            int from = random.nextInt(text.length());
            int to = Math.min(text.length(), from + random.nextInt(12));
            text.replace(from, to, PIECES.get(random.nextInt(PIECES.size())));
        }

        LessonReading reading = LessonFixture.read(text.toString());

        assertTrue(reading.lesson().isPresent() != !reading.faults().isEmpty());
        LessonFixture.texts(reading.faults()).forEach(it -> assertTrue(!it.isBlank()));
        reading.lesson().ifPresent(lesson -> LessonLint.check(lesson, LessonFixture.CATALOGUE));
    }

    @Property(tries = 300)
    void read_lineTwiceOrGone_isALessonOrWords(@ForAll Random random) {
        List<String> lines = new ArrayList<>(FILES.get(0).lines().toList());
        int line = random.nextInt(lines.size());
        if (random.nextBoolean()) {
            lines.remove(line);
        } else {
            lines.add(random.nextInt(lines.size()), lines.get(line));
        }

        LessonReading reading = LessonFixture.read(String.join("\n", lines) + "\n");

        assertTrue(reading.lesson().isPresent() != !reading.faults().isEmpty());
        reading.lesson().ifPresent(lesson -> LessonLint.check(lesson, LessonFixture.CATALOGUE));
    }
}
