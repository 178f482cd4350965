package org.sagwise.ui.lesson.author;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that is looked at only when the test says so. */
class FolderWatchTest {

    @TempDir
    private Path folder;

    private int told;
    private FolderWatch watch;

    @BeforeEach
    void watchALesson() throws IOException {
        Files.writeString(folder.resolve("lesson.yaml"), "lesson: 1");
        watch = new FolderWatch(folder, () -> told++);
    }

    private void save(String text) throws IOException {
        Files.writeString(folder.resolve("lesson.yaml"), text);
    }

    @Test
    void look_atAFolderLeftAlone_tellsNothing() {
        watch.look();
        watch.look();
        assertEquals(0, told);
    }

    @Test
    void look_afterASave_tellsOnceItHasComeToRest() throws IOException {
        save("lesson: 1\ntitle:");
        watch.look();
        assertEquals(0, told, "perhaps it is still being written");
        watch.look();
        watch.look();
        assertEquals(1, told);
    }

    @Test
    void look_whileItIsWritten_waitsForTheLastByte() throws IOException {
        save("lesson: 1\n");
        watch.look();
        save("lesson: 1\ntitle: {en: ");
        watch.look();
        save("lesson: 1\ntitle: {en: A, de: B}");
        watch.look();
        assertEquals(0, told);
        watch.look();
        assertEquals(1, told);
    }

    /** As many editors save; the new file may be as long as the old one. */
    @Test
    void look_afterSavingByRename_tells() throws IOException {
        Path other = folder.resolve("lesson.yaml.part");
        Files.writeString(other, "lesson: 2");
        Files.setLastModifiedTime(other, Files.getLastModifiedTime(folder.resolve("lesson.yaml")));
        Files.move(other, folder.resolve("lesson.yaml"), StandardCopyOption.REPLACE_EXISTING);
        watch.look();
        watch.look();
        assertEquals(1, told);
    }

    @Test
    void look_afterABenchWasSaved_tells() throws IOException {
        Files.writeString(folder.resolve("start.sagwise.json"), "{}");
        watch.look();
        watch.look();
        assertEquals(1, told);
    }

    @Test
    void look_atAnEditorsOwnFiles_tellsNothing() throws IOException {
        Files.writeString(folder.resolve(".lesson.yaml.swp"), "x");
        watch.look();
        watch.look();
        assertEquals(0, told);
    }

    @Test
    void look_whenTheFolderIsGone_tells() throws IOException {
        Files.delete(folder.resolve("lesson.yaml"));
        watch.look();
        watch.look();
        assertEquals(1, told);
    }
}
