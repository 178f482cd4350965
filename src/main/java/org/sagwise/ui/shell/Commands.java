package org.sagwise.ui.shell;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import org.sagwise.part.PartKind;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.ui.bench.ViewModel;
import org.sagwise.ui.clock.ClockCommands;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.lesson.LessonCommands;
import org.sagwise.ui.lesson.author.AuthorCommands;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.share.ShareCommands;
import org.sagwise.ui.share.ShareDesk;
import org.sagwise.ui.workbench.EditCommands;
import org.sagwise.ui.workbench.Workbench;

/** Everything that the window can be told to do, but for what has a choice of its own. */
record Commands(
        Command blank,
        Command open,
        Command reread,
        Command save,
        Command saveAs,
        Command quit,
        Command undo,
        Command redo,
        EditCommands edits,
        Command sameWatts,
        ShareCommands shares,
        Command findPart,
        Command title,
        Command latch,
        ClockCommands time,
        Command zoomIn,
        Command zoomOut,
        Command fit,
        Command textLarger,
        Command textSmaller,
        Command schematic,
        Command examples,
        LessonCommands lessons,
        AuthorCommands author,
        Command lead,
        Command projector,
        Command fullScreen,
        Command table,
        Command doors,
        Command keys,
        Command notice,
        Command about) {

    /** What the window itself has to do. */
    interface WindowActions {
        void close();

        void toggleFullScreen();

        void editTitle();

        void showCard();

        void newBench();

        void findPart();

        void toggleColumn();

        void showDoors();

        void showSameWatts();

        void askRows();

        void showTable();

        void showLead();

        void toggleProjector();

        void showKeys();

        void showNotice();

        void showAbout();
    }

    private static final int TEXT_STEP = 25;

    static Commands of(
            BenchModel bench,
            Workbench work,
            Documents documents,
            PreferencesModel preferences,
            ViewModel view,
            ShareDesk desk,
            ClockCommands time,
            LessonCommands lessons,
            AuthorCommands author,
            WindowActions window) {
        BooleanBinding noFile = Bindings.createBooleanBinding(
                () -> documents.fileProperty().get().isEmpty(), documents.fileProperty());
        BooleanBinding noButton = Bindings.createBooleanBinding(
                () -> bench.scenario().partsOf(PartKind.SWITCH).isEmpty(), bench.historyProperty());
        BooleanBinding nothingToUndo =
                Bindings.createBooleanBinding(() -> bench.history().undoable().isEmpty(), bench.historyProperty());
        BooleanBinding nothingToRedo =
                Bindings.createBooleanBinding(() -> bench.history().redoable().isEmpty(), bench.historyProperty());
        BooleanBinding fewCells = Bindings.createBooleanBinding(
                () -> EditCommands.cells(work).size() < 2, work.movesProperty(), bench.historyProperty());
        return new Commands(
                Command.of("new", window::newBench).by("Shortcut+N"),
                Command.of("open", documents::open).by("Shortcut+O"),
                Command.of("reread", documents::reread).by("F5").unless(noFile),
                Command.of("save", documents::save).by("Shortcut+S"),
                Command.of("save-as", documents::saveAs).by("Shortcut+Shift+S"),
                Command.of("quit", window::close).by("Shortcut+Q"),
                Command.of("undo", bench::undo).by("Shortcut+Z").unless(nothingToUndo),
                Command.of("redo", bench::redo).by("Shortcut+Shift+Z").unless(nothingToRedo),
                EditCommands.of(work, window::showCard, window::askRows),
                Command.of("same-watts", window::showSameWatts).by("Shortcut+4").unless(fewCells),
                ShareCommands.of(desk),
                Command.of("find-part", window::findPart).by("Shortcut+F"),
                Command.of("title", window::editTitle).by("F2"),
                Command.of("latch", bench.button()::toggleLatch)
                        .by("Shortcut+L")
                        .unless(noButton),
                time,
                Command.of("zoom-in", view::zoomIn).by("Shortcut+Plus"),
                Command.of("zoom-out", view::zoomOut).by("Shortcut+Minus"),
                Command.of("fit", view::fit).by("Shortcut+0"),
                Command.of("text-larger", () -> scaleText(preferences, TEXT_STEP))
                        .by("Shortcut+Shift+Plus"),
                Command.of("text-smaller", () -> scaleText(preferences, -TEXT_STEP))
                        .by("Shortcut+Shift+Minus"),
                Command.of("schematic", () -> preferences.change(Commands::turnDrawing))
                        .by("Shift+F9"),
                Command.of("examples", window::toggleColumn).by("F9"),
                lessons,
                author,
                Command.of("instructor", window::showLead).by("Shortcut+I"),
                Command.of("projector", window::toggleProjector).by("F12"),
                Command.of("full-screen", window::toggleFullScreen).by("F11"),
                Command.of("table", window::showTable).by("Shortcut+T"),
                Command.of("doors", window::showDoors),
                Command.of("keys", window::showKeys).by("F1"),
                Command.of("notice", window::showNotice),
                Command.of("about", window::showAbout));
    }

    private static void scaleText(PreferencesModel preferences, int percent) {
        preferences.change(now -> now.withTextPercent(now.textPercent() + percent));
    }

    private static Preferences turnDrawing(Preferences now) {
        return now.withDrawing(now.drawing() == Drawing.BENCH ? Drawing.SCHEMATIC : Drawing.BENCH);
    }
}
