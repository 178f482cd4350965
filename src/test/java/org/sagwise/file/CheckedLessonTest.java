package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.scenario.Finding;

/** Lessons in folders, tried out; whatever is wrong belongs to a step where it can. */
class CheckedLessonTest {

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void copyALesson() throws IOException {
        Path lesson = Files.createDirectories(folder.resolve("mine"));
        try (Stream<Path> files = Files.list(Path.of("lessons", "01-close-the-ring"))) {
            for (Path each : files.toList()) {
                Files.copy(each, lesson.resolve(each.getFileName()));
            }
        }
        file = lesson.resolve("lesson.yaml");
    }

    private void change(String before, String after) throws IOException {
        Files.writeString(file, Files.readString(file).replace(before, after));
    }

    private CheckedLesson check() throws IOException {
        List<LessonSource> sources = LessonFolder.lessons(folder).stream()
                .map(LessonSource::ofFolder)
                .toList();
        return CheckedLesson.all(sources, LessonFixture.CATALOGUE, LessonLibrary.ids())
                .get(0);
    }

    @Test
    void check_ofASoundLesson_findsNothing() throws IOException {
        assertEquals(List.of(), check().faults());
        assertEquals("mine", check().id());
    }

    @Test
    void check_ofAnExpectationThatIsWrong_belongsToItsStepWithLineAndColumn() throws IOException {
        change("is: 4.2,", "is: 5,");
        CheckedLesson checked = check();

        List<Finding> here = checked.faultsOf("close");
        assertEquals(1, checked.faults().size());
        assertEquals(checked.faults(), here);
        int line = here.get(0).position().orElseThrow().line();
        assertTrue(Files.readAllLines(file).get(line - 1).contains("is: 5,"));
        int begins = checked.position("close").orElseThrow().line();
        assertTrue(Files.readAllLines(file).get(begins - 1).contains("id: close"));
    }

    @Test
    void check_ofAFileThatIsNoLesson_stillKnowsTheSteps() throws IOException {
        change("kind: do", "kind: done");
        CheckedLesson checked = check();

        assertTrue(checked.lesson().isEmpty());
        assertFalse(checked.faultsOf("close").isEmpty());
        assertTrue(checked.position("close").isPresent());
    }

    @Test
    void check_ofBrokenYaml_belongsToNoStep() throws IOException {
        change("steps:", "steps: [");
        CheckedLesson checked = check();

        assertEquals(1, checked.faults().size());
        assertEquals(Optional.empty(), checked.step(checked.faults().get(0)));
        assertTrue(checked.faults().get(0).text(Locale.ENGLISH).startsWith("line "));
    }

    @Test
    void lessons_ofAFolder_areItselfOrThoseInside() throws IOException {
        Files.createDirectories(folder.resolve("empty"));

        assertEquals(List.of(folder.resolve("mine")), LessonFolder.lessons(folder));
        assertEquals(List.of(folder.resolve("mine")), LessonFolder.lessons(folder.resolve("mine")));
        assertFalse(LessonFolder.isOne(folder.resolve("empty")));
        assertFalse(LessonFolder.isOne(folder.resolve("gone")));
    }
}
