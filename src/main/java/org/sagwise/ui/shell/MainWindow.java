package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Dimension2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Colour;
import org.sagwise.ui.analysis.ReadingsWindow;
import org.sagwise.ui.analysis.SameWattsDialog;
import org.sagwise.ui.bench.SpaceBar;
import org.sagwise.ui.clock.ClockCommands;
import org.sagwise.ui.clock.CourseSaver;
import org.sagwise.ui.desk.ChoiceWindow;
import org.sagwise.ui.desk.DrawerWindow;
import org.sagwise.ui.desk.VaryWindow;
import org.sagwise.ui.desk.WindWindow;
import org.sagwise.ui.inspector.InsideCellWindow;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.StyleSheets;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.GlossaryWindow;
import org.sagwise.ui.lesson.IdeasCheckWindow;
import org.sagwise.ui.lesson.LessonCommands;
import org.sagwise.ui.lesson.author.AuthorCommands;
import org.sagwise.ui.lesson.instructor.InstructorCommands;
import org.sagwise.ui.lesson.instructor.InstructorView;
import org.sagwise.ui.lesson.instructor.InstructorWindow;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.Shown;
import org.sagwise.ui.share.ComparePane;
import org.sagwise.ui.share.PasteAnywhere;
import org.sagwise.ui.share.ShareCommands;
import org.sagwise.ui.share.ShareDesk;
import org.sagwise.ui.sound.BenchSounds;
import org.sagwise.ui.sound.Loudspeaker;
import org.sagwise.ui.start.AboutDialog;
import org.sagwise.ui.start.ExampleBenches;
import org.sagwise.ui.start.ManualWindow;
import org.sagwise.ui.start.NoticeDialogs;
import org.sagwise.ui.start.RecoveryOffer;
import org.sagwise.ui.start.StartPage;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.EditCommands;
import org.sagwise.ui.workbench.Workbench;

/**
 * The window: its place on the screen, its title, its language, and what happens when it is closed.
 * What is inside is thrown away and built anew when the language changes; the models stay.
 */
public final class MainWindow {

    private final Stage stage;
    private final Models models;
    private final RecoveryOffer leftovers;
    private final Supplier<Wording> wording;
    private final Subscriptions lasting = new Subscriptions();
    private final ClockRow clockRow;
    private Scene scene;
    private Subscriptions inside = new Subscriptions();
    private Dialogs dialogs;
    private ReadingsWindow table;
    private GlossaryWindow glossary;
    private InsideCellWindow insideCell;
    private WindWindow winding;
    private DrawerWindow drawer;
    private VaryWindow varying;
    private ChoiceWindow choosing;
    private IdeasCheckWindow ideasCheck;
    private ManualWindow manual;
    private InstructorWindow instructor;
    private Commands commands;

    /**
     * @param leftovers what earlier runs of the program could not save
     * @param wording the words in the present language
     */
    public MainWindow(Stage stage, Models models, RecoveryOffer leftovers, Supplier<Wording> wording) {
        this.stage = stage;
        this.models = models;
        this.leftovers = leftovers;
        this.wording = wording;
        this.clockRow = new ClockRow(models.time().clock(), models.lessons(), lasting);
    }

    /** Dialogs of this window in the present language. */
    public Dialogs dialogs() {
        return dialogs;
    }

    /**
     * Opens the window.
     *
     * @param file what to put on the bench
     * @param knowsWhat whether what lies on the bench was asked for, and the doors are not
     * @param icons the program's icon, as {@link WindowIcons#painted()} has it
     */
    public void open(Optional<Path> file, boolean knowsWhat, List<byte[]> icons) {
        // What needs no question lies on the bench from the first frame on.
        Optional<Path> toAsk = file.filter(
                path -> leftovers.isNeeded() || !models.files().documents().openUnasked(path));
        prepare(icons);
        build();
        lasting.onChange(models.shown().preferences().property().map(Preferences::language), this::translate);
        Loudspeaker speaker = new Loudspeaker();
        new BenchSounds(models.bench().model(), models.shown().preferences(), speaker, lasting);
        lasting.add(speaker::close);
        lasting.onChange(models.bench().model().historyProperty(), this::title);
        // Whoever comes back from another program learns what it did to the file.
        lasting.watch(stage.focusedProperty(), here -> {
            if (here) {
                models.files().documents().lookAround();
            }
        });
        WindowPlacer.show(stage, models.shown().preferences().get());
        lasting.watch(models.shown().looks().property().map(AppliedLooks::theme), theme -> {
            models.offers().thumbnails().paint(models.offers().examples(), theme);
            models.offers().stock().pictures().paint(models.offers().stock().goods(), theme);
        });
        // Questions come up over a window that is there.
        WindowPlacer.whenPlaced(() -> {
            boolean first = models.shown().preferences().get().noticeRead() == 0;
            NoticeDialogs.showOnce(models.shown().preferences(), dialogs);
            leftovers.offer(models.files().documents(), dialogs);
            toAsk.ifPresent(frame()::take);
            if (first
                    && file.isEmpty()
                    && !knowsWhat
                    && models.bench().model().history().isSaved()) {
                showStartPage();
            }
        });
    }

    private void prepare(List<byte[]> icons) {
        Dimension2D size = WindowPlacer.size(models.shown().preferences().get());
        scene = new Scene(new Region(), size.getWidth(), size.getHeight());
        // First of all that follows the looks: what measures itself then finds the new letters.
        lasting.watch(scene.heightProperty(), high -> models.shown().looks().fit(high.doubleValue()));
        StyleSheets.follow(models.shown().looks(), scene.getStylesheets(), lasting);
        lasting.watch(models.shown().looks().property().map(AppliedLooks::theme), theme -> scene.setFill(paper(theme)));
        stage.setScene(scene);
        // Esc puts back what is in the hand, and must not end the class's full screen with it.
        stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
        stage.getIcons().setAll(WindowIcons.images(icons));
        stage.setOnCloseRequest(request -> {
            request.consume();
            close();
        });
    }

    /** What is seen until the first frame is drawn: no flash of white in a dark room. */
    private static Color paper(Theme theme) {
        Colour paper = theme.colour(Tone.PAPER);
        return Color.rgb(paper.red(), paper.green(), paper.blue());
    }

    /** Stops what goes on in it: a clock that beats keeps a window alive, and busy, that is long closed. */
    public void dispose() {
        inside.close();
        lasting.close();
    }

    /** An example that nobody changed speaks the window's language; other benches keep theirs. */
    private void translate() {
        if (models.files().documents().fileProperty().get().isEmpty()) {
            ExampleBenches.untouched(
                            models.bench().model().scenario(), models.offers().examples())
                    .map(example -> example.scenario(wording.get().locale()))
                    .ifPresent(models.files().documents()::openExample);
        }
        build();
    }

    private void build() {
        inside.close();
        inside = new Subscriptions();
        Wording words = wording.get();
        dialogs = new Dialogs(stage, models.shown().looks(), words);
        SideWindows windows = new SideWindows(stage, models.shown().looks().property());
        SideWindows near = new SideWindows(stage, models.shown().looks().nearProperty());
        table = new ReadingsWindow(
                windows,
                models.bench().model(),
                reading -> varying.show(reading),
                models.shown().looks(),
                words);
        glossary = new GlossaryWindow(windows, models.shown().looks().property(), words);
        ideasCheck = new IdeasCheckWindow(
                windows, models.lessons().book(), models.lessons().shelf()::all, words);
        insideCell = new InsideCellWindow(windows, models.shown().looks().property(), words);
        winding = new WindWindow(
                models.bench().work(), windows, models.shown().looks().property(), words);
        drawer = new DrawerWindow(
                windows,
                models.shown().looks(),
                models.bench().work(),
                stage::toFront,
                models.behindTheScenes(),
                words);
        varying =
                new VaryWindow(models.bench().work(), windows, models.shown().looks(), models.behindTheScenes(), words);
        manual = new ManualWindow(
                windows, models.offers().examples(), models.bench().assess(), words);
        inside.add(windows::closeAll);
        inside.add(near::closeAll);
        instructor = instructor(near, words);
        ShareDesk desk = new ShareDesk(
                models.bench().model(),
                () -> models.time().clock().nowProperty().get().timeS(),
                models.files().documents(),
                dialogs,
                windows,
                models.behindTheScenes(),
                new ComparePane.Models(
                        models.bench().model(),
                        models.files().documents(),
                        models.bench().assess(),
                        models.shown().looks(),
                        models.offers().examples()),
                models.bench().work()::say,
                models.bench().work().board()::paste,
                models.bench().work().written()::figures,
                models.files().pages());
        choosing = new ChoiceWindow(
                windows, models.shown().looks(), models.files().documents()::openUnsaved, desk::compare, words, inside);
        models.lessons().room().speak();
        Consumer<Path> openLessons =
                AuthorCommands.opener(models.lessons().author(), dialogs, () -> frame().showLessons());
        commands = new Commands()
                .add(WindowCommands.document(
                        models.bench().model(),
                        models.files().documents(),
                        models.bench().work()::say,
                        words))
                .add(WindowCommands.looks(
                        models.shown().preferences(), models.shown().view()))
                .add(EditCommands.of(
                        models.bench().work(),
                        () -> frame().showCard(),
                        () -> RowsDialog.show(models.bench().work(), dialogs)))
                .add(veiled(
                        ClockCommands.of(models.time().clock(), models.shown().preferences(), this::saveCourse)))
                .add(veiled(ShareCommands.of(desk)))
                .add(LessonCommands.of(
                        models.lessons().room(),
                        models.lessons().book(),
                        models.shown().preferences(),
                        dialogs))
                .add(AuthorCommands.of(
                        models.lessons().author(), models.shown().preferences(), stage, words, openLessons))
                .add(InstructorCommands.of(
                        models.lessons().room(),
                        models.lessons().desk(),
                        models.time().clock(),
                        models.bench().model().button()))
                .add(veiled(own()));
        scene.setRoot(new MainFrame(models, commands, openLessons, this::lookUp, words, inside));
        SpaceBar.holds(models.bench().model().button(), stage, inside);
        PasteAnywhere.in(scene, desk, inside);
        title();
    }

    private void title() {
        Wording words = wording.get();
        boolean lent = models.files().documents().lentProperty().getValue();
        String mark = lent || models.bench().model().history().isSaved() ? "" : "• ";
        stage.setTitle(
                words.say("window.title", mark + Header.titleOf(models.bench().model(), words)));
    }

    private void close() {
        if (models.files().documents().mayLeave()) {
            WindowPlacer.remember(stage, models.shown().preferences());
            inside.close();
            lasting.close();
            stage.close();
        }
    }

    private List<Command> veiled(List<Command> all) {
        return LessonCommands.veiled(all, models.bench().model().button().lockedProperty());
    }

    /** What can be done with the window itself. */
    private List<Command> own() {
        Workbench work = models.bench().work();
        return List.of(
                Command.of("new", () -> frame().enter(StartPage.Door.BUILD)).by("Shortcut+N"),
                Command.of("quit", this::close).by("Shortcut+Q"),
                Command.of(
                                "same-watts",
                                EditCommands.onCells(
                                        work, () -> SameWattsDialog.show(work, models.behindTheScenes(), dialogs)))
                        .by("Shortcut+4"),
                Command.of("find-part", () -> frame().findPart()).by("Shortcut+F"),
                Command.of("title", () -> TitleDialog.show(models.bench().model(), dialogs))
                        .by("F2"),
                Command.of("examples", () -> frame().toggleColumn())
                        .by("F9")
                        .ticked(WindowCommands.isColumnWanted(models.shown().preferences())),
                Command.of("readings", () -> frame().toggleReadings())
                        .by("Shortcut+F9")
                        .ticked(models.shown().preferences().property().map(it -> it.readings() == Shown.SHOWN)),
                Command.of("clock", clockRow::toggle).by("Shortcut+F8").ticked(clockRow.shownProperty()),
                Command.of("instructor", () -> instructor.show()).by("Shortcut+I"),
                Command.of("projector", models.shown().looks()::toggleProjector)
                        .by("F12")
                        .ticked(models.shown().looks().projectorProperty()),
                Command.of("full-screen", this::toggleFullScreen).by("F11"),
                Command.of("vary", () -> varying.show()).by("Shortcut+Shift+R"),
                Command.of("choose-pack", () -> choosing.show()).by("Shortcut+Shift+P"),
                Command.of("table", () -> table.show()).by("Shortcut+T"),
                Command.of("drawer", () -> drawer.show()).by("Shortcut+Shift+D"),
                Command.of("doors", this::showStartPage),
                Command.of(
                                "manual",
                                () -> manual.show(models.shown().looks().get().theme()))
                        .by("F1"),
                Command.of("glossary", () -> glossary.show()).by("Shift+F1"),
                Command.of("ideas-check", () -> ideasCheck.show()),
                Command.of("keys", () -> KeysDialog.show(frame().menus(), dialogs))
                        .by("Shortcut+F1"),
                Command.of("notice", () -> NoticeDialogs.show(dialogs)),
                Command.of("about", () -> AboutDialog.show(dialogs)));
    }

    private void toggleFullScreen() {
        stage.setFullScreen(!stage.isFullScreen());
        if (stage.isFullScreen()) {
            models.bench().work().say(wording.get().say("status.full-screen"));
        }
    }

    private void lookUp(String id) {
        if (id.equals(InsideCellWindow.ID)) {
            insideCell.show();
        } else if (id.startsWith(WindWindow.ID)) {
            winding.show(id.substring(WindWindow.ID.length()));
        } else if (id.startsWith(VaryWindow.ID)) {
            varying.show(id.substring(VaryWindow.ID.length()));
        } else {
            glossary.show(id);
        }
    }

    private void saveCourse() {
        CourseSaver.save(models.time().clock(), stage, dialogs);
    }

    private MainFrame frame() {
        return (MainFrame) stage.getScene().getRoot();
    }

    private InstructorWindow instructor(SideWindows windows, Wording words) {
        Models.Lessons lessons = models.lessons();
        return new InstructorWindow(
                windows,
                words,
                subscriptions -> new InstructorView(
                        lessons.room(),
                        lessons.shelf(),
                        lessons.desk(),
                        lessons.pace(),
                        commands,
                        words,
                        subscriptions));
    }

    private void showStartPage() {
        StartPage.show(
                models.offers().examples(),
                models.offers().thumbnails(),
                dialogs,
                door -> frame().enter(door),
                commands.get("new-words").action());
    }
}
