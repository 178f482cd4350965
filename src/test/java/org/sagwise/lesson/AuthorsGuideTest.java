package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The guide for authors says what the program does. */
class AuthorsGuideTest {

    private final String guide = read();

    @Test
    void guide_listOfIdeas_isComplete() {
        for (Idea idea : Idea.values()) {
            String row = "| `" + idea.word() + "` | " + idea.sentence(Locale.ENGLISH) + " |";
            assertTrue(guide.contains(row), row);
        }
    }

    @Test
    void guide_readingsInItsTables_areThere() {
        Lesson lesson = LessonFixture.builtIn("09-where-the-volts-went");
        var named = lesson.scenarios(Locale.ENGLISH);
        Situation situation = Situation.of(named.get("start"), named, LessonFixture.CATALOGUE);
        int read = 0;
        for (String[] row : new String[][] {
            {"| a cell |", "A"},
            {"| a coil |", "coil"},
            {"| any other part |", "fire"},
            {"| a joint with an id |", "lead"},
            {"| `pack` |", "pack"}
        }) {
            String line = guide.lines()
                    .filter(it -> it.startsWith(row[0]))
                    .findFirst()
                    .orElseThrow();
            boolean run = false;
            for (String piece : line.split("(?=after a run)")) {
                Matcher name =
                        Pattern.compile("`(\\w+_\\w+|efficiency|charge|ohm)`").matcher(piece);
                while (name.find()) {
                    When when = run ? When.RUN : When.HELD;
                    ReadingRef ref = new ReadingRef(Optional.empty(), when, row[1], name.group(1));
                    // A coil known by its ohms alone has no temperature that anybody could tell.
                    boolean known = !name.group(1).equals("temperature_C");
                    assertEquals(known, situation.read(ref).isPresent(), ref.toString());
                    read++;
                }
                run = true;
            }
        }
        assertEquals(37, read);
    }

    @Test
    void guide_stepsItShows_canBeRead() {
        StringBuilder steps = new StringBuilder();
        Matcher block =
                Pattern.compile("```yaml\\n(  - id:.*?)```", Pattern.DOTALL).matcher(guide);
        while (block.find()) {
            steps.append(block.group(1));
        }
        String sound = LessonFixture.resource("sound.yaml");
        String yaml = sound.substring(0, sound.indexOf("  - id:")) + steps;

        var reading = LessonFixture.read(yaml);

        // The shortened question shows two answers where three are asked for.
        assertEquals(
                List.of(LessonProblem.TOO_FEW),
                reading.faults().stream().map(it -> it.problem()).toList());
        assertEquals(5, yaml.split("  - id:").length - 1);
    }

    private static String read() {
        try {
            return Files.readString(Path.of("docs/lesson-authors.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
