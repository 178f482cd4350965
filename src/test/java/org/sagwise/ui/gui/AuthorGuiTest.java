package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Somebody writes a lesson and has it open in the window. */
class AuthorGuiTest extends GuiTest {

    private static final String OWN = "lesson-own-my-lesson";

    private static final long LONGEST_MS = 30_000;

    private Path lesson;

    @BeforeEach
    void openTheFolder() throws Exception {
        lesson = Files.createDirectories(folder().resolve("my-lesson"));
        try (Stream<Path> files = Files.list(Path.of("lessons", "01-close-the-ring"))) {
            for (Path file : files.toList()) {
                Files.copy(file, lesson.resolve(file.getFileName()));
            }
        }
        open(lesson.toString());
        until(() -> isThere(OWN));
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.A);
        settle();
        work(OWN);
    }

    /**
     * The program looks at the folder by itself; how soon does not matter here. It is asked on the
     * thread of the window, where nothing is half rebuilt.
     */
    private static void until(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> WaitForAsyncUtils.waitForAsyncFx(LONGEST_MS, condition));
    }

    private Path file() {
        return lesson.resolve("lesson.yaml");
    }

    private void save(String before, String after) throws IOException {
        String text = Files.readString(file());
        assertTrue(text.contains(before), before);
        Files.writeString(file(), text.replace(before, after));
    }

    /** As editors do that never leave a half-written file behind. */
    private void saveByRename(String before, String after) throws IOException {
        Path other = lesson.resolve("lesson.yaml~");
        Files.writeString(other, Files.readString(file()).replace(before, after));
        Files.move(other, file(), StandardCopyOption.REPLACE_EXISTING);
    }

    private String stepText() {
        return robot().from(node("lesson-text")).lookup(".run").queryAllAs(Text.class).stream()
                .map(Text::getText)
                .collect(Collectors.joining());
    }

    @Test
    void save_whileTheLessonRuns_showsTheNewTextInTheSameStep() throws Exception {
        robot().push(KeyCode.ALT, KeyCode.RIGHT);
        settle();
        assertEquals("Step 2 of 13", text("lesson-place"));
        assertTrue(text("author-state").startsWith("✓"), text("author-state"));

        save(
                "- id: gap\n    kind: predict",
                "- id: start\n"
                        + "    kind: say\n"
                        + "    text: {en: \"New.\", de: \"Neu.\"}\n"
                        + "  - id: gap\n"
                        + "    kind: predict");
        until(() -> text("lesson-place").equals("Step 3 of 14"));
        assertEquals("Predict", text("lesson-kind"));

        saveByRename("One joint is missing", "There is a gap");
        until(() -> stepText().startsWith("There is a gap"));
    }

    @Test
    void save_withAMistake_showsItBesideItsStepWithLineAndColumn() throws Exception {
        save("is: 4.2,", "is: 5,");
        until(() -> text("author-state").contains("elsewhere: 1"));
        work("author-all");
        assertTrue(isThere("author-page"));
    }

    @Test
    void save_ofBrokenYaml_keepsTheLastGoodLessonOnScreen() throws Exception {
        String good = Files.readString(file());
        Files.writeString(file(), good.substring(0, good.length() / 2) + "\n  {broken: [");
        until(() -> text("author-state").startsWith("The file cannot be read"));
        assertEquals("Step 1 of 13", text("lesson-place"));
        assertTrue(isThere("lesson-text"));
        assertTrue(robot().lookup("#author-strip .fault-place").queryAllAs(Label.class).stream()
                .anyMatch(label -> label.getText().matches("Line \\d+, column \\d+.*")));

        Files.writeString(file(), good);
        until(() -> text("author-state").startsWith("✓"));
        assertFalse(robot().lookup("#author-strip .fault").tryQuery().isPresent());
    }

    @Test
    void recentFolder_emptiedMeanwhile_saysThatThereIsNoLesson() throws Exception {
        MenuItem recent = recent();
        work("button-lesson-leave");
        Files.delete(file());
        robot().interact(() -> Platform.runLater(recent::fire));
        until(() -> isThere("no-lessons"));
        robot().clickOn("#no-lessons-cancel_close");
        settle();

        assertEquals("Your folder: my-lesson", heading());
    }

    private String heading() {
        return robot().from(node("own-lessons"))
                .lookup(".section-title")
                .queryLabeled()
                .getText();
    }

    private MenuItem recent() {
        return ((MenuBar) node("menus"))
                .getMenus().stream()
                        .flatMap(menu -> menu.getItems().stream())
                        .filter(item -> "menu-lessons-recent".equals(item.getId()))
                        .map(item -> ((Menu) item).getItems().get(0))
                        .findFirst()
                        .orElseThrow();
    }

    /** Whoever forgot to turn authoring off does not show a class what is to be mended. */
    @Test
    void projector_whileAuthoring_showsOnlyTheLesson() {
        work("author-all");
        robot().push(KeyCode.F12);
        settle();
        assertFalse(isThere("author-page"));
        assertFalse(isThere("author-strip"));
        assertTrue(isThere("lesson-text"));

        robot().push(KeyCode.F12);
        settle();
        assertTrue(isThere("author-strip"));
    }

    @Test
    void authoringMode_turnedOff_leavesTheLessonAlone() {
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.A);
        settle();

        assertFalse(node("author-strip").isVisible());
        assertEquals("Step 1 of 13", text("lesson-place"));
    }
}
