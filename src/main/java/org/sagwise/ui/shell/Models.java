package org.sagwise.ui.shell;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.sagwise.assessment.Assessment;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.analysis.CureModel;
import org.sagwise.ui.bench.LargeBenchOpening;
import org.sagwise.ui.bench.Layouts;
import org.sagwise.ui.bench.ViewModel;
import org.sagwise.ui.clock.ClockModel;
import org.sagwise.ui.clock.Companion;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.lesson.LessonPace;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.LessonShelf;
import org.sagwise.ui.lesson.ProgressBook;
import org.sagwise.ui.lesson.VoteModel;
import org.sagwise.ui.lesson.author.AuthorController;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.start.Thumbnails;
import org.sagwise.ui.workbench.ShelfColumn;
import org.sagwise.ui.workbench.Workbench;

/**
 * What the window shows and works on.
 *
 * @param painter paints large pictures one after the other, and forgets them once the program ends
 * @param behindTheScenes does what takes longer
 */
public record Models(
        BenchModel bench,
        ClockModel clock,
        Companion companion,
        Workbench work,
        Function<Scenario, Assessment> assess,
        CureModel cures,
        ShelfColumn.Stock stock,
        Documents documents,
        PreferencesModel preferences,
        LooksModel looks,
        ViewModel view,
        Layouts layouts,
        LargeBenchOpening opening,
        List<Example> examples,
        Thumbnails thumbnails,
        Lessons lessons,
        Executor painter,
        Executor behindTheScenes) {

    /** Lessons to choose from, and the one that runs. */
    public record Lessons(
            LessonShelf shelf,
            LessonSession room,
            ProgressBook book,
            VoteModel desk,
            LessonPace pace,
            AuthorController author) {}
}
