package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A lesson from a stranger shows nothing of the machine that it is opened on. */
@DisabledOnOs(OS.WINDOWS)
class LessonSourceTest {

    @TempDir
    private Path folder;

    @Test
    void file_linkThatLeadsOutOfTheLesson_isNotThere() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "of the machine");
        Path lesson = Files.createDirectory(folder.resolve("lesson"));
        Files.createSymbolicLink(lesson.resolve("start.sagwise.json"), secret);
        Files.createSymbolicLink(lesson.resolve("up"), folder);

        assertEquals(Optional.empty(), LessonSource.ofFolder(lesson).file("start.sagwise.json"));
        assertEquals(Optional.empty(), LessonSource.ofFolder(lesson).file("up/secret"));
        assertEquals(Optional.empty(), LessonSource.ofFolder(lesson).file("../secret"));
    }

    @Test
    void file_linkWithinTheLessonAndLessonThatIsALink_areThere() throws IOException {
        Path lesson = Files.createDirectory(folder.resolve("lesson"));
        Path real = Files.writeString(lesson.resolve("real.sagwise.json"), "bench");
        Files.createSymbolicLink(lesson.resolve("start.sagwise.json"), real);
        Path link = Files.createSymbolicLink(folder.resolve("link"), lesson);

        assertTrue(LessonSource.ofFolder(lesson).file("start.sagwise.json").isPresent());
        assertTrue(LessonSource.ofFolder(link).file("start.sagwise.json").isPresent());
    }
}
