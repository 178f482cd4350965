package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;

class ScenarioFilesTest {

    private static final Scenario SCENARIO = Scenario.empty().withTitle("Zwei Zellen an 1 Ω");

    /** No system gives a process this number. */
    private static final long NOBODY = 999_999_999_999L;

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
        String leftOver = unfinished(ProcessHandle.current().pid());
        Files.writeString(folder.resolve(leftOver), "of another thread");
        assertInstanceOf(Saved.Done.class, ScenarioFiles.save(folder.resolve("a.sagwise.json"), SCENARIO));
        assertOnly("a.sagwise.json", leftOver);
    }

    @Test
    void save_besideLeftOversOfTheDead_takesThemAwayWhateverTheyWereToBecome() throws IOException {
        Files.writeString(folder.resolve(unfinished(NOBODY)), "of a process that died");
        assertInstanceOf(Saved.Done.class, ScenarioFiles.save(folder.resolve("a.sagwise.json"), SCENARIO));
        assertOnly("a.sagwise.json");
    }

    /** Only a file of ours goes: no folder, no link, no other program's name. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_besideWhatOthersMade_leavesIt() throws IOException {
        String empty = ".sagwise-" + NOBODY + "-1.tmp";
        String link = ".sagwise-" + NOBODY + "-2.tmp";
        String foreign = ".a.sagwise.json." + NOBODY + "-0.tmp";
        Files.createDirectory(folder.resolve(empty));
        Files.createSymbolicLink(folder.resolve(link), folder.resolve("nothing"));
        Files.writeString(folder.resolve(foreign), "of another program");
        ScenarioFiles.save(folder.resolve("a.sagwise.json"), SCENARIO);
        assertOnly("a.sagwise.json", empty, link, foreign);
    }

    /** In a folder that machines or containers share, no process tells, but the lock does. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_besideWhatIsBeingWrittenElsewhere_leavesIt() throws Exception {
        Path busy = Files.writeString(folder.resolve(unfinished(NOBODY)), "half");
        Process elsewhere = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        place(Holder.class) + File.pathSeparator + place(Unfinished.class),
                        Holder.class.getName(),
                        busy.toString())
                .start();
        try (InputStream said = elsewhere.getInputStream()) {
            assertEquals('!', said.read());
            ScenarioFiles.save(folder.resolve("a.sagwise.json"), SCENARIO);
            assertOnly("a.sagwise.json", busy.getFileName().toString());
        } finally {
            elsewhere.destroy();
            elsewhere.waitFor();
        }
    }

    private static Path place(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    /** Holds a file as a writer does, until it is ended. */
    static final class Holder {

        private Holder() {}

        public static void main(String[] args) throws IOException {
            try (FileChannel file = FileChannel.open(Path.of(args[0]), StandardOpenOption.WRITE)) {
                Unfinished.claim(file);
                System.out.print('!');
                System.out.flush();
                System.in.read();
            }
        }
    }

    @Test
    void save_underALongName_isDone() throws IOException {
        String name = "a".repeat(240) + ".sagwise.json";
        assertInstanceOf(Saved.Done.class, ScenarioFiles.save(folder.resolve(name), SCENARIO));
        assertOnly(name);
    }

    /** A file in the place of a device would take the device from the whole machine. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void save_overAPipe_failsAndLeavesIt() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        assertFailed(Problem.FILE_IS_NO_FILE, ScenarioFiles.save(pipe, SCENARIO));
        assertThrows(IOException.class, () -> new SettingsFile(pipe).save(Map.of()));
        assertTrue(Files.exists(pipe) && !Files.isRegularFile(pipe));
        assertOnly("pipe");
    }

    private static String unfinished(long process) {
        return ".sagwise-" + process + "-0.tmp";
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
