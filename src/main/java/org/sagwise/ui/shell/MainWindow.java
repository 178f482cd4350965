package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.sagwise.ui.analysis.ReadingsWindow;
import org.sagwise.ui.analysis.SameWattsDialog;
import org.sagwise.ui.bench.SpaceBar;
import org.sagwise.ui.clock.ClockCommands;
import org.sagwise.ui.clock.CourseSaver;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.StyleSheets;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LessonCommands;
import org.sagwise.ui.lesson.author.AuthorCommands;
import org.sagwise.ui.lesson.instructor.InstructorCommands;
import org.sagwise.ui.lesson.instructor.InstructorView;
import org.sagwise.ui.lesson.instructor.InstructorWindow;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.share.ComparePane;
import org.sagwise.ui.share.PasteAnywhere;
import org.sagwise.ui.share.ShareDesk;
import org.sagwise.ui.start.AboutDialog;
import org.sagwise.ui.start.ExampleBenches;
import org.sagwise.ui.start.NoticeDialogs;
import org.sagwise.ui.start.RecoveryOffer;
import org.sagwise.ui.start.StartPage;
import org.sagwise.ui.text.Wording;

/**
 * The window: its place on the screen, its title, its language, and what happens when it is closed.
 * What is inside is thrown away and built anew when the language changes; the models stay.
 */
public final class MainWindow implements Commands.WindowActions {

    private final Stage stage;
    private final Models models;
    private final RecoveryOffer leftovers;
    private final Supplier<Wording> wording;
    private final Subscriptions lasting = new Subscriptions();
    private Scene scene;
    private Subscriptions inside = new Subscriptions();
    private Dialogs dialogs;
    private ReadingsWindow table;
    private InstructorWindow lead;
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
    }

    /** Dialogs of this window in the present language. */
    public Dialogs dialogs() {
        return dialogs;
    }

    /**
     * Opens the window.
     *
     * @param file what to put on the bench
     */
    public void open(Optional<Path> file) {
        build();
        stage.getIcons().setAll(WindowIcons.all());
        stage.setOnCloseRequest(request -> {
            request.consume();
            close();
        });
        lasting.onChange(models.preferences().property().map(Preferences::language), this::translate);
        lasting.onChange(models.bench().historyProperty(), this::title);
        stage.show();
        WindowPlacer.place(stage, models.preferences().get());
        lasting.watch(models.looks().property().map(AppliedLooks::theme), theme -> {
            models.thumbnails().paint(models.examples(), theme);
            models.stock().pictures().paint(models.stock().goods(), theme);
        });
        // Questions come up over a window that is there.
        Platform.runLater(() -> {
            boolean first = models.preferences().get().noticeRead() == 0;
            NoticeDialogs.showOnce(models.preferences(), dialogs);
            leftovers.offer(models.documents(), dialogs);
            file.ifPresent(frame()::take);
            if (first && file.isEmpty() && models.bench().history().isSaved()) {
                showDoors();
            }
        });
    }

    /** An example that nobody changed speaks the window's language; other benches keep theirs. */
    private void translate() {
        if (models.documents().fileProperty().get().isEmpty()) {
            ExampleBenches.untouched(models.bench().scenario(), models.examples())
                    .map(example -> example.scenario(wording.get().locale()))
                    .ifPresent(models.documents()::openExample);
        }
        build();
    }

    private void build() {
        inside.close();
        inside = new Subscriptions();
        Wording words = wording.get();
        dialogs = new Dialogs(stage, models.looks(), words);
        SideWindows windows = new SideWindows(stage, models.looks().property());
        SideWindows near = new SideWindows(stage, models.looks().nearProperty());
        table = new ReadingsWindow(windows, models.bench(), words);
        inside.add(windows::closeAll);
        inside.add(near::closeAll);
        lead = lead(near, words);
        ShareDesk desk = new ShareDesk(
                models.bench(),
                () -> models.clock().nowProperty().get().timeS(),
                models.documents(),
                dialogs,
                windows,
                models.behindTheScenes(),
                new ComparePane.Models(
                        models.bench(), models.documents(), models.assess(), models.looks(), models.examples()),
                models.work()::say,
                models.work().board()::paste,
                models.work().written()::figures);
        models.lessons().room().speak();
        commands = Commands.of(
                models.bench(),
                models.work(),
                models.documents(),
                models.preferences(),
                models.view(),
                desk,
                ClockCommands.of(models.clock(), models.preferences(), this::saveCourse),
                LessonCommands.of(models.lessons().room(), models.lessons().book(), models.preferences(), dialogs),
                AuthorCommands.of(
                        models.lessons().author(), models.preferences(), stage, dialogs, () -> frame().showLessons()),
                this);
        if (scene == null) {
            // First of all that follows the looks: what measures itself then finds the new letters.
            scene = new Scene(new Region());
            lasting.watch(scene.heightProperty(), high -> models.looks().fit(high.doubleValue()));
            StyleSheets.follow(models.looks(), scene.getStylesheets(), lasting);
        }
        scene.setRoot(new MainFrame(models, commands, words, inside));
        stage.setScene(scene);
        SpaceBar.holds(models.bench().button(), stage, inside);
        PasteAnywhere.in(scene, desk, inside);
        title();
    }

    private void title() {
        Wording words = dialogs.wording();
        boolean lent = models.documents().lentProperty().getValue();
        String mark = lent || models.bench().history().isSaved() ? "" : "• ";
        stage.setTitle(words.say("window.title", mark + Header.titleOf(models.bench(), words)));
    }

    @Override
    public void close() {
        if (models.documents().mayLeave()) {
            WindowPlacer.remember(stage, models.preferences());
            inside.close();
            lasting.close();
            stage.close();
        }
    }

    @Override
    public void toggleFullScreen() {
        stage.setFullScreen(!stage.isFullScreen());
    }

    @Override
    public void editTitle() {
        TitleDialog.show(models.bench(), dialogs);
    }

    private void saveCourse() {
        CourseSaver.save(models.clock(), stage, dialogs);
    }

    private MainFrame frame() {
        return (MainFrame) stage.getScene().getRoot();
    }

    @Override
    public void newBench() {
        frame().enter(StartPage.Door.BUILD);
    }

    @Override
    public void findPart() {
        frame().findPart();
    }

    @Override
    public void toggleColumn() {
        frame().toggleColumn();
    }

    @Override
    public void showCard() {
        frame().showCard();
    }

    private InstructorWindow lead(SideWindows windows, Wording words) {
        Models.Lessons lessons = models.lessons();
        return new InstructorWindow(
                windows,
                words,
                subscriptions -> new InstructorView(
                        lessons.room(),
                        lessons.shelf(),
                        lessons.desk(),
                        lessons.pace(),
                        commands.lessons(),
                        InstructorCommands.of(
                                lessons.room(),
                                lessons.desk(),
                                models.clock(),
                                models.bench().button(),
                                commands.projector(),
                                commands.author().author()),
                        words,
                        subscriptions));
    }

    @Override
    public void toggleProjector() {
        models.looks().toggleProjector();
    }

    @Override
    public void showLead() {
        lead.show();
    }

    @Override
    public void askRows() {
        RowsDialog.show(models.work(), dialogs);
    }

    @Override
    public void showSameWatts() {
        SameWattsDialog.show(models.work(), dialogs);
    }

    @Override
    public void showDoors() {
        StartPage.show(models.examples(), models.thumbnails(), dialogs, door -> frame().enter(door));
    }

    @Override
    public void showTable() {
        table.show();
    }

    @Override
    public void showKeys() {
        KeysDialog.show(frame().menus(), dialogs);
    }

    @Override
    public void showNotice() {
        NoticeDialogs.show(dialogs);
    }

    @Override
    public void showAbout() {
        AboutDialog.show(dialogs);
    }
}
