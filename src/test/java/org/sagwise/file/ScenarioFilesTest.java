package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

class ScenarioFilesTest {

    private static final Scenario SCENARIO = Scenario.empty().withTitle("Zwei Zellen an 1 Ω");

    @TempDir
    private Path folder;

    @Test
    void save_newFile_holdsTheText() throws IOException {
        Path file = folder.resolve("new.sagwise.json");
        assertEquals(new Saved.Done(file), ScenarioFiles.save(file, SCENARIO));
        assertEquals(ScenarioWriter.write(SCENARIO), Files.readString(file));
        assertOnly("new.sagwise.json");
    }

    @Test
    void save_overOldFile_replacesItWhole() throws IOException {
        Path file = Files.writeString(folder.resolve("old.sagwise.json"), "x".repeat(10_000));
        assertInstanceOf(Saved.Done.class, ScenarioFiles.save(file, SCENARIO));
        assertEquals(ScenarioWriter.write(SCENARIO), Files.readString(file));
        assertOnly("old.sagwise.json");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_overOldFile_keepsPermissions() throws IOException {
        Path file = Files.writeString(folder.resolve("old.sagwise.json"), "");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw---x"));
        ScenarioFiles.save(file, SCENARIO);
        assertEquals("rw-rw---x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_throughLinks_replacesTheirTarget() throws IOException {
        Path target = Files.writeString(folder.resolve("target.sagwise.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), target.getFileName());
        Path further = Files.createSymbolicLink(folder.resolve("further"), link);
        assertEquals(new Saved.Done(target), ScenarioFiles.save(further, SCENARIO));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(ScenarioWriter.write(SCENARIO), Files.readString(target));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_throughLinkToNothing_makesItsTarget() throws IOException {
        Path target = folder.resolve("target.sagwise.json");
        Path link = Files.createSymbolicLink(folder.resolve("link"), target);
        assertEquals(new Saved.Done(target), ScenarioFiles.save(link, SCENARIO));
        assertTrue(Files.isRegularFile(target));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_throughLinkToItself_fails() throws IOException {
        Path link = folder.resolve("link");
        Files.createSymbolicLink(link, link);
        assertFailed(Problem.SAVE_FAILED, ScenarioFiles.save(link, SCENARIO));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_overWriteProtectedFile_leavesIt() throws IOException {
        Path file = Files.writeString(folder.resolve("old.sagwise.json"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertFailed(Problem.FILE_UNWRITABLE, ScenarioFiles.save(file, SCENARIO));
        assertEquals("old", Files.readString(file));
        assertOnly("old.sagwise.json");
    }

    @Test
    void save_intoMissingFolder_fails() {
        Path file = folder.resolve("no").resolve("a.sagwise.json");
        assertFailed(Problem.FOLDER_MISSING, ScenarioFiles.save(file, SCENARIO));
    }

    @Test
    void save_overFolder_fails() {
        assertFailed(Problem.FILE_IS_FOLDER, ScenarioFiles.save(folder, SCENARIO));
    }

    @Test
    void save_diskFillsUp_leavesOldFileAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("old.sagwise.json"), "old");
        AtomicFile.Sink fillingUp = (channel, bytes) -> {
            channel.write(ByteBuffer.wrap(new byte[] {bytes.get()}));
            throw new IOException("No space left on device");
        };
        assertFailed(Problem.DISK_FULL, ScenarioFiles.save(file, "new", fillingUp));
        assertEquals("old", Files.readString(file));
        assertOnly("old.sagwise.json");
    }

    @Test
    void save_otherTrouble_saysTheSystemsWords() throws IOException {
        Path file = Files.writeString(folder.resolve("old.sagwise.json"), "old");
        Saved saved = ScenarioFiles.save(file, "new", (channel, bytes) -> {
            throw new IOException("Input/output error");
        });
        Saved.Failed failed = assertInstanceOf(Saved.Failed.class, saved);
        assertTrue(failed.problem().text(Locale.ENGLISH).endsWith("as it was: Input/output error."));
        assertEquals("old", Files.readString(file));
    }

    @Test
    void save_besideLeftOvers_takesAnotherName() throws IOException {
        Path file = folder.resolve("a.sagwise.json");
        long process = ProcessHandle.current().pid();
        String leftOver = "." + file.getFileName() + "." + process + "-0.tmp";
        Files.writeString(folder.resolve(leftOver), "of a process that died");
        assertInstanceOf(Saved.Done.class, ScenarioFiles.save(file, SCENARIO));
        assertOnly("a.sagwise.json", leftOver);
    }

    private void assertOnly(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    Stream.of(names).sorted().toList(),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    private static void assertFailed(Problem problem, Saved saved) {
        Saved.Failed failed = assertInstanceOf(Saved.Failed.class, saved);
        assertEquals(problem, failed.problem().problem());
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            assertTrue(failed.problem().text(locale).length() > 20);
        }
    }
}
