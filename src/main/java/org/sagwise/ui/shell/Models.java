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
import org.sagwise.ui.share.PageDesk;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.start.Thumbnails;
import org.sagwise.ui.workbench.ShelfColumn;
import org.sagwise.ui.workbench.Workbench;

/**
 * What the window shows and works on.
 *
 * @param behindTheScenes does what takes longer
 */
public record Models(
        Bench bench, Time time, Files files, Offers offers, Shown shown, Lessons lessons, Executor behindTheScenes) {

    /** What lies on the bench, what is done to it, and what is computed of it. */
    public record Bench(BenchModel model, Workbench work, Function<Scenario, Assessment> assess, CureModel cures) {}

    /** Time on the bench, and on the one beside it. */
    public record Time(ClockModel clock, Companion companion) {}

    /** What comes from files and goes there. */
    public record Files(Documents documents, LargeBenchOpening opening, PageDesk pages) {}

    /** What there is to choose from. */
    public record Offers(ShelfColumn.Stock stock, List<Example> examples, Thumbnails thumbnails) {}

    /**
     * How it is shown.
     *
     * @param painter paints large pictures one after the other, and forgets them once the program ends
     */
    public record Shown(
            PreferencesModel preferences, LooksModel looks, ViewModel view, Layouts layouts, Executor painter) {}

    /** Lessons to choose from, and the one that runs. */
    public record Lessons(
            LessonShelf shelf,
            LessonSession room,
            ProgressBook book,
            VoteModel desk,
            LessonPace pace,
            AuthorController author) {}
}
