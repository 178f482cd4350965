package org.sagwise.ui.clock;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.report.RunCsv;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.Trace;
import org.sagwise.ui.kit.Dialogs;

/** Writes what the clock has recorded to a file that a spreadsheet reads. */
public final class CourseSaver {

    private static final String ENDING = ".csv";

    private CourseSaver() {}

    /** Asks where, and writes; says so if it cannot be written. */
    public static void save(ClockModel clock, Stage stage, Dialogs dialogs) {
        ClockTexts texts = new ClockTexts(dialogs.wording().locale());
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.word("save.title"));
        chooser.setInitialFileName(texts.word("save.name") + ENDING);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(texts.word("save.kind"), "*" + ENDING));
        Optional<File> chosen = Optional.ofNullable(chooser.showSaveDialog(stage));
        clock.course()
                .flatMap(course -> chosen.flatMap(file -> write(course, file.toPath(), texts.locale())))
                .ifPresent(failure -> tell(failure, texts, dialogs));
    }

    /**
     * Writes a course as a table, whole or not at all.
     *
     * @return what went wrong; empty if it is written
     */
    static Optional<String> write(Trace course, Path file, Locale locale) {
        byte[] table = RunCsv.of(course).getBytes(StandardCharsets.UTF_8);
        return ScenarioFiles.save(file, table) instanceof Saved.Failed failed
                ? Optional.of(failed.problem().text(locale))
                : Optional.empty();
    }

    private static void tell(String failure, ClockTexts texts, Dialogs dialogs) {
        Label label = new Label(texts.word("save.failed", failure));
        label.setWrapText(true);
        dialogs.tell("course-not-written", texts.word("save.failed.title"), label);
    }
}
