package org.sagwise.ui.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.SettingsStore;

class DocumentsTest {

    private static final Scenario OPENING = Scenario.empty().withTitle("Opening");

    @TempDir
    private Path folder;

    private final Answers answers = new Answers();
    private final PreferencesModel preferences = new PreferencesModel(new Forgetful());
    private final BenchModel bench = new BenchModel(s -> Assessment.of(s, CatalogueLoader.builtIn()), OPENING);
    private final Documents documents = new Documents(
            bench,
            new DiskScenarios(new ScenarioReader(CatalogueLoader.builtIn()), () -> Locale.ENGLISH),
            answers,
            preferences,
            (scenario, then) -> prepared(then),
            new FileWitness(Path.of(
                    System.getProperty("java.io.tmpdir"),
                    "sagwise-open-" + ProcessHandle.current().pid())));
    private Optional<Runnable> beforeReady = Optional.empty();

    /** Something may happen while a bench is made ready. */
    private void prepared(Runnable then) {
        beforeReady.ifPresent(Runnable::run);
        then.run();
    }

    private void change() {
        bench.edit("rename", now -> now.withTitle("Changed"));
    }

    private Path file(String title) throws IOException {
        Path path = folder.resolve(title + ".sagwise.json");
        return Files.writeString(path, ScenarioWriter.write(Scenario.empty().withTitle(title)));
    }

    @Test
    void openText_shareTextInAPost_liesOnTheBenchUnsaved() {
        String share = ShareText.of(Scenario.empty().withTitle("Shared")).orElseThrow();
        documents.openText("Look at this:\n" + share + "\nThanks!", parts -> {});

        assertEquals("Shared", bench.scenario().title());
        assertEquals(Optional.empty(), documents.fileProperty().get());
        assertFalse(bench.history().isSaved());
    }

    @Test
    void openText_clipped_isRefusedBeforeAnybodyIsAskedAboutTheBench() {
        change();
        String share = ShareText.of(Scenario.empty().withTitle("Shared")).orElseThrow();
        documents.openText(share.substring(0, share.length() - 5), parts -> {});

        assertEquals("Changed", bench.scenario().title());
        assertEquals(1, answers.textTroubles.size());
        assertTrue(answers.textTroubles.get(0).text().contains("clipped"));
    }

    @Test
    void open_aFile_liesOnTheBenchAndIsRemembered() throws IOException {
        Path path = file("Other");
        documents.open(path);

        assertEquals("Other", bench.scenario().title());
        assertEquals(Optional.of(path), documents.fileProperty().get());
        assertEquals(List.of(path), preferences.get().recent());
    }

    @Test
    void openUnasked_aGoodFile_liesOnTheBenchAndIsRemembered() throws IOException {
        Path path = file("Other");
        assertTrue(documents.openUnasked(path));

        assertEquals("Other", bench.scenario().title());
        assertEquals(Optional.of(path), documents.fileProperty().get());
        assertEquals(List.of(path), preferences.get().recent());
    }

    @Test
    void openUnasked_whereSomethingWouldBeAsked_changesNothingAndAsksNothing() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.sagwise.json"), "{");
        assertFalse(documents.openUnasked(broken));
        assertFalse(documents.openUnasked(folder.resolve("none.sagwise.json")));
        assertFalse(documents.openUnasked(folder));
        Path good = file("Other");
        change();
        assertFalse(documents.openUnasked(good));

        assertEquals("Changed", bench.scenario().title());
        assertEquals(Optional.empty(), documents.fileProperty().get());
        assertEquals(List.of(), answers.troubles);
        assertEquals(List.of(), preferences.get().recent());
    }

    @Test
    void open_changedWhileTheOtherIsMadeReady_asksAboutTheChange() throws IOException {
        Path path = file("Other");
        beforeReady = Optional.of(this::change);
        answers.unsaved = FileDialogs.Unsaved.STAY;
        documents.open(path);
        assertEquals("Changed", bench.scenario().title());

        answers.unsaved = FileDialogs.Unsaved.DISCARD;
        documents.open(path);
        assertEquals("Other", bench.scenario().title());
    }

    @Test
    void open_brokenFile_showsEveryProblemAndLeavesTheBench() throws IOException {
        change();
        answers.unsaved = FileDialogs.Unsaved.DISCARD;
        Path broken = Files.writeString(folder.resolve("broken.sagwise.json"), """
                        {"sagwise": 1,
                         "parts": [{"id": "A", "kind": "sell"},
                                   {"id": "coil", "kind": "coil", "ohm": -1}],
                         "links": [{"from": "A.+", "to": "nowhere.1", "ideal": true}]}
                        """);
        documents.open(broken);

        assertEquals(3, answers.troubles.size(), answers.troubles.toString());
        assertTrue(answers.troubles.get(0).place().contains("parts[0].kind"));
        assertTrue(answers.troubles.get(0).place().contains("2:"));
        assertEquals("Changed", bench.scenario().title());
        assertEquals(Optional.empty(), documents.fileProperty().get());
        assertFalse(bench.history().isSaved());
    }

    @Test
    void open_brokenFileRepairedMeanwhile_opensOnReadingAgain() throws IOException {
        Path path = Files.writeString(folder.resolve("a.sagwise.json"), "{");
        answers.onTroubles = () -> overwrite(path, Scenario.empty().withTitle("Repaired"));
        documents.open(path);

        assertEquals("Repaired", bench.scenario().title());
    }

    @Test
    void open_withUnsavedChanges_asksAndStays() throws IOException {
        change();
        answers.unsaved = FileDialogs.Unsaved.STAY;
        documents.open(file("Other"));

        assertEquals("Changed", bench.scenario().title());
    }

    @Test
    void mayLeave_saveButThinkingBetterOfTheName_stays() {
        change();
        answers.unsaved = FileDialogs.Unsaved.SAVE;

        assertFalse(documents.mayLeave());
    }

    @Test
    void save_withoutAFile_asksForOneAndAddsTheEnding() {
        change();
        answers.toSave = Optional.of(folder.resolve("mine"));
        assertTrue(documents.save());

        Path written = folder.resolve("mine.sagwise.json");
        assertTrue(Files.exists(written));
        assertEquals(Optional.of(written), documents.fileProperty().get());
        assertTrue(bench.history().isSaved());
        assertEquals("Changed", answers.suggested);
    }

    @Test
    void saveAs_endingMakesItAnExistingFile_asksBeforeReplacing() throws IOException {
        Path there = file("mine");
        String before = Files.readString(there);
        answers.toSave = Optional.of(folder.resolve("mine"));
        answers.mayReplace = false;

        assertFalse(documents.saveAs());
        assertEquals(before, Files.readString(there));
    }

    @Test
    void save_whereNothingCanBeWritten_saysSoAndStaysUnsaved() {
        change();
        answers.toSave = Optional.of(folder.resolve("no such folder").resolve("mine"));

        assertFalse(documents.save());
        assertEquals(1, answers.notWritten.size());
        assertFalse(bench.history().isSaved());
    }

    @Test
    void reread_changedByAnotherProgram_takesItOver() throws IOException {
        Path path = file("Before");
        documents.open(path);
        overwrite(path, Scenario.empty().withTitle("After"));
        documents.reread();

        assertEquals("After", bench.scenario().title());
    }

    private static void overwrite(Path path, Scenario scenario) {
        try {
            Files.writeString(path, ScenarioWriter.write(scenario));
        } catch (IOException failure) {
            throw new AssertionError(failure);
        }
    }

    /** Keeps nothing. */
    private static final class Forgetful implements SettingsStore {
        @Override
        public Preferences load() {
            return Preferences.fresh();
        }

        @Override
        public void save(Preferences preferences) {}
    }

    /** A person who knows in advance what to answer. */
    @Test
    void save_overAnotherProgramsChange_asksAndKeepsACopy() throws IOException {
        Path path = file("Mine");
        documents.open(path);
        change();
        String theirs = ScenarioWriter.write(Scenario.empty().withTitle("Theirs"));
        Files.writeString(path, theirs);

        assertFalse(documents.save(), "stays unless told otherwise");
        assertEquals(1, answers.changes);
        assertEquals(theirs, Files.readString(path));
        documents.lookAround();
        assertEquals(Documents.Rival.WRITER, documents.rivalProperty().get());

        answers.overwrite = FileDialogs.Overwrite.KEEP_COPY;
        assertTrue(documents.save());
        assertTrue(Files.readString(path).contains("Changed"));
        assertEquals(theirs, Files.readString(folder.resolve("Mine-other-1.sagwise.json")));
        assertEquals(Documents.Rival.NONE, documents.rivalProperty().get());
        change2();
        assertTrue(documents.save(), "its own writing is no change");
        assertEquals(2, answers.changes);
    }

    @Test
    void save_ofAFileThatNobodyElseTouched_asksNothing() throws IOException {
        documents.open(file("Mine"));
        documents.lookAround();
        assertEquals(Documents.Rival.NONE, documents.rivalProperty().get());
        change();
        assertTrue(documents.save());
        change2();
        assertTrue(documents.save());
        assertEquals(0, answers.changes);
    }

    private void change2() {
        bench.edit("rename", now -> now.withTitle("Again"));
    }

    @Test
    void save_overAnotherProgramsChange_canGoElsewhere() throws IOException {
        Path path = file("Mine");
        documents.open(path);
        change();
        Files.writeString(path, "not even a scenario");
        answers.overwrite = FileDialogs.Overwrite.SAVE_ELSEWHERE;
        answers.toSave = Optional.of(folder.resolve("elsewhere.sagwise.json"));

        assertTrue(documents.save());
        assertEquals("not even a scenario", Files.readString(path));
        assertTrue(Files.exists(folder.resolve("elsewhere.sagwise.json")));
    }

    @Test
    void open_inTwoWindows_isNoticed() throws IOException {
        Path path = file("Shared");
        FileWitness other = new FileWitness(folder.resolve("open"));
        FileWitness own = new FileWitness(folder.resolve("open"));
        other.belongTo(path);
        own.belongTo(path);
        assertTrue(other.isAlone());
        assertFalse(own.isAlone());

        own.leave();
        other.close();
        own.belongTo(path);
        assertTrue(own.isAlone());
        own.close();
    }

    private static final class Answers implements FileDialogs {
        private List<ScenarioStore.Trouble> textTroubles = List.of();

        private Optional<Path> toSave = Optional.empty();
        private Unsaved unsaved = Unsaved.STAY;
        private Overwrite overwrite = Overwrite.STAY;
        private int changes;
        private boolean mayReplace = true;
        private Runnable onTroubles;
        private String suggested;
        private List<ScenarioStore.Trouble> troubles = List.of();
        private final List<String> notWritten = new ArrayList<>();

        @Override
        public Optional<Path> chooseToOpen(Optional<Path> from) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> chooseToSave(Optional<Path> from, String title) {
            suggested = title;
            return toSave;
        }

        @Override
        public boolean mayReplace(Path file) {
            return mayReplace;
        }

        @Override
        public Unsaved askAboutUnsaved(String title) {
            return unsaved;
        }

        @Override
        public Overwrite askAboutChanged(Path file) {
            changes++;
            return overwrite;
        }

        @Override
        public void showNoCopy(Path file) {
            notWritten.add("no copy");
        }

        @Override
        public NextStep showTroubles(Path file, List<ScenarioStore.Trouble> found) {
            troubles = found;
            if (onTroubles == null) {
                return NextStep.LEAVE_IT;
            }
            onTroubles.run();
            return NextStep.READ_AGAIN;
        }

        @Override
        public void showTextTroubles(List<ScenarioStore.Trouble> troubles) {
            textTroubles = troubles;
        }

        @Override
        public void showNotWritten(Path file, String why) {
            notWritten.add(why);
        }
    }
}
