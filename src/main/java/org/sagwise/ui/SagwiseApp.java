package org.sagwise.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Duration;
import javafx.util.Subscription;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonReader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Shuffle;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.scenario.edit.ShelfItems;
import org.sagwise.ui.analysis.CureModel;
import org.sagwise.ui.bench.LargeBenchOpening;
import org.sagwise.ui.bench.Layouts;
import org.sagwise.ui.bench.ViewModel;
import org.sagwise.ui.clock.ClockModel;
import org.sagwise.ui.clock.Companion;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.DiskScenarios;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.document.FileWitness;
import org.sagwise.ui.document.Recovery;
import org.sagwise.ui.document.StageFileDialogs;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.lesson.HintTimer;
import org.sagwise.ui.lesson.LessonPace;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.LessonShelf;
import org.sagwise.ui.lesson.ProgressBook;
import org.sagwise.ui.lesson.VoteModel;
import org.sagwise.ui.lesson.author.AuthorController;
import org.sagwise.ui.settings.AnswerOrder;
import org.sagwise.ui.settings.ConfigFolder;
import org.sagwise.ui.settings.DiskSettings;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.settings.LooksWatch;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.SystemLooks;
import org.sagwise.ui.settings.SystemShell;
import org.sagwise.ui.share.LivePages;
import org.sagwise.ui.share.PageDesk;
import org.sagwise.ui.shell.FailureReport;
import org.sagwise.ui.shell.MainWindow;
import org.sagwise.ui.shell.Models;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.start.ExampleBenches;
import org.sagwise.ui.start.RecoveryOffer;
import org.sagwise.ui.start.Thumbnails;
import org.sagwise.ui.text.Language;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.ShelfColumn;
import org.sagwise.ui.workbench.ShelfPictures;
import org.sagwise.ui.workbench.Workbench;
import org.sagwise.words.TradeWords;

/** The window of the program: makes every part of it and joins them. */
public class SagwiseApp extends Application {

    /** Name of the parameter that holds a language tag for this one start. */
    public static final String LANGUAGE = "language";

    /** Name of the parameter that holds the name of a demo to open with. */
    public static final String DEMO = "demo";

    /** Name of the parameter that holds a line of words to build. */
    public static final String WORDS = "words";

    /** Time after which the system is asked again whether it has become dark, s. */
    private static final long LOOK_AGAIN_S = 60;

    /** Time from the first frame on in which nothing is done that can wait. */
    private static final Duration FIRST_FRAMES = Duration.millis(250);

    private final CompletableFuture<SystemLooks> systemLooks = CompletableFuture.supplyAsync(SagwiseApp::systemNow);
    /** Open once the first frames were seen: until then the window has the machine to itself. */
    private final CountDownLatch curtain = new CountDownLatch(1);

    private final ExecutorService behindTheScenes = Executors.newSingleThreadExecutor(SagwiseApp::quietThread);
    private final ExecutorService foresight = Executors.newSingleThreadExecutor(SagwiseApp::quietThread);
    private final ExecutorService onRequest = Executors.newSingleThreadExecutor(SagwiseApp::quietThread);
    private final ExecutorService time = Executors.newSingleThreadExecutor(SagwiseApp::timeThread);
    private final ScheduledExecutorService writing =
            Executors.newSingleThreadScheduledExecutor(SagwiseApp::quietThread);
    private final ExecutorService painter = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            SagwiseApp::painterThread,
            // The last frame of a window that closes may still ask for a picture.
            new ThreadPoolExecutor.DiscardPolicy());
    private final Recovery recovery = new Recovery(ConfigFolder.here());
    private final FileWitness witness = new FileWitness(ConfigFolder.here().resolve("open"));
    private MainWindow window;
    private Subscription stageWatch = Subscription.EMPTY;
    private Consumer<String> builder;

    @Override
    public void start(Stage stage) {
        Map<String, String> asked = getParameters().getNamed();
        Optional<String> demo = Optional.ofNullable(asked.get(DEMO));
        open(stage, getParameters().getUnnamed(), demo, asked.getOrDefault(LANGUAGE, ""));
        Optional.ofNullable(asked.get(WORDS)).ifPresent(this::build);
    }

    /**
     * Opens the window.
     *
     * @param files at most one file to put on the bench
     * @param demo the demo to begin with instead of the usual one
     * @param askedTag language for this once; empty for the one chosen in the window
     */
    void open(Stage stage, List<String> files, Optional<String> demo, String askedTag) {
        behindTheScenes.execute(this::awaitCurtain);
        foresight.execute(this::awaitCurtain);
        Catalogue catalogue = Overture.catalogue();
        ScenarioReader reader = new ScenarioReader(catalogue);
        List<Example> examples = Overture.examples();
        PreferencesModel preferences = new PreferencesModel(new DiskSettings(ConfigFolder.here()));
        LooksModel looks = new LooksModel(preferences);
        Consumer<SystemLooks> follow = found -> Platform.runLater(() -> looks.follow(found));
        systemLooks.thenAccept(follow);
        LooksWatch watch = new LooksWatch(SagwiseApp::systemNow, writing, follow, System::nanoTime);
        Runnable look = () -> {
            if (!writing.isShutdown()) {
                watch.look();
            }
        };
        stageWatch = stage.focusedProperty().subscribe(here -> {
            if (here) {
                look.run();
            }
        });
        writing.scheduleWithFixedDelay(() -> Platform.runLater(look), LOOK_AGAIN_S, LOOK_AGAIN_S, TimeUnit.SECONDS);
        Supplier<Locale> locale = askedOrChosen(askedTag, preferences);
        Function<Scenario, Assessment> assess = scenario -> Assessment.of(scenario, catalogue);
        BenchModel bench = new BenchModel(
                assess,
                ExampleBenches.named(demo.orElse(DemoScenarios.OPENING), examples)
                        .orElseThrow()
                        .scenario(locale.get()));
        Layouts layouts = new Layouts();
        LargeBenchOpening opening = new LargeBenchOpening(layouts, looks, new Threads(onRequest, Platform::runLater));
        Documents documents = new Documents(
                bench,
                new DiskScenarios(reader, locale),
                new StageFileDialogs(stage, () -> window.dialogs()),
                preferences,
                opening,
                witness);
        ViewModel view = new ViewModel();
        ProgressBook book = new ProgressBook(ConfigFolder.here());
        LessonShelf shelf = new LessonShelf(new LessonReader(catalogue), behindTheScenes, Platform::runLater);
        Threads threads = new Threads(time, Platform::runLater);
        ClockModel clock = new ClockModel(bench, threads, System::nanoTime);
        LessonSession room = new LessonSession(
                bench,
                documents,
                catalogue,
                locale,
                book,
                view::fit,
                () -> shuffle(preferences),
                new HintTimer(System::nanoTime),
                () -> clock.nowProperty().get().timeS() > 0,
                () -> shelf.lessonsProperty().get());
        Models.Lessons lessons = new Models.Lessons(
                shelf,
                room,
                book,
                new VoteModel(),
                new LessonPace(room, System::nanoTime),
                new AuthorController(catalogue, shelf, room, preferences, writing, this::showFile));
        List<ShelfItem> goods = ShelfItems.of(catalogue);
        Companion companion = new Companion(clock, bench, threads, assess);
        room.playerProperty().subscribe(now -> companion.accompany(now.flatMap(LessonPlayer::beside)));
        Models models = new Models(
                new Models.Bench(
                        bench,
                        new Workbench(bench, new ScenarioRules(catalogue), locale),
                        assess,
                        new CureModel(bench, assess, foresight)),
                new Models.Time(clock, companion),
                new Models.Files(documents, opening, new PageDesk(pages(), LatestTask.in(onRequest))),
                new Models.Offers(
                        new ShelfColumn.Stock(goods, new ShelfPictures(goods, assess, behindTheScenes)),
                        examples,
                        new Thumbnails(examples, assess, behindTheScenes)),
                new Models.Shown(preferences, looks, view, layouts, painter),
                lessons,
                onRequest);
        recovery.follow(bench);
        window = new MainWindow(stage, models, new RecoveryOffer(recovery, reader), () -> Wording.in(locale.get()));
        Thread.currentThread().setUncaughtExceptionHandler(new FailureReport(() -> window.dialogs()));
        lessons.author().openLast();
        builder = line ->
                TradeWords.read(line, catalogue, locale.get()).scenario().ifPresent(documents::openUnsaved);
        Overture.awaitTypeface();
        window.open(files.stream().findFirst().map(Path::of), demo.isPresent(), Overture.icons());
        PauseTransition firstFrames = new PauseTransition(FIRST_FRAMES);
        firstFrames.setOnFinished(seen -> curtain.countDown());
        firstFrames.play();
    }

    private void awaitCurtain() {
        try {
            curtain.await();
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        }
    }

    /** What writes live pages; none, unless whoever starts the window hands it in. */
    protected LivePages pages() {
        return LivePages.NONE;
    }

    private static SystemLooks systemNow() {
        return SystemLooks.of(System.getProperty("os.name"), SystemShell::ask);
    }

    /** Builds a line of words, once the window is there. */
    private void build(String line) {
        Platform.runLater(() -> builder.accept(line));
    }

    /** The language asked for at the start holds until another is chosen in the window. */
    private static Supplier<Locale> askedOrChosen(String askedTag, PreferencesModel preferences) {
        String before = preferences.get().language();
        return () -> {
            String chosen = preferences.get().language();
            return Language.of(askedTag.isEmpty() || !chosen.equals(before) ? chosen : askedTag);
        };
    }

    private static Shuffle shuffle(PreferencesModel preferences) {
        return preferences.get().answers() == AnswerOrder.SHUFFLED ? new Shuffle(System.nanoTime() | 1) : Shuffle.NONE;
    }

    /** Opens a file in the program that the system has for files of its kind. */
    private void showFile(Path file) {
        getHostServices().showDocument(file.toUri().toString());
    }

    @Override
    public void stop() {
        if (window != null) {
            window.dispose();
        }
        stageWatch.unsubscribe();
        behindTheScenes.shutdownNow();
        foresight.shutdownNow();
        onRequest.shutdownNow();
        time.shutdownNow();
        writing.shutdownNow();
        painter.shutdownNow();
        recovery.close();
        witness.close();
    }

    private static Thread timeThread(Runnable work) {
        return daemon(work, "time on the bench");
    }

    private static Thread painterThread(Runnable work) {
        return daemon(work, "painter");
    }

    private static Thread daemon(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    private static Thread quietThread(Runnable work) {
        Thread thread = daemon(work, "behind the scenes");
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }
}
