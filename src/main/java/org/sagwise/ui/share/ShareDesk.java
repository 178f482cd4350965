package org.sagwise.ui.share;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.assessment.Moment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ShareText;
import org.sagwise.plan.CheckStep;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.CopyBoard;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Where a bench is handed on, and one that was handed on is taken. */
public final class ShareDesk {

    private static final double POST_WIDTH = 1040;
    private static final double POST_HEIGHT = 620;
    private static final double PICTURE_WIDTH = 960;
    private static final double PICTURE_HEIGHT = 600;
    private static final double COMPARE_WIDTH = 1400;
    private static final double COMPARE_HEIGHT = 800;
    private static final double MEASURED_WIDTH = 860;
    private static final double MEASURED_HEIGHT = 620;
    private static final double WORDS_WIDTH = 1100;
    private static final double WORDS_HEIGHT = 680;

    private final BenchModel bench;
    private final DoubleSupplier clockS;
    private final Documents documents;
    private final Dialogs dialogs;
    private final SideWindows windows;
    private final Executor behindTheScenes;
    private final ComparePane.Models compared;
    private final Consumer<String> say;
    private final Consumer<Scenario> parts;
    private final Supplier<Map<CheckStep, String>> written;
    private final PageDesk pages;

    /**
     * @param clockS the moment that the bench shows, s from the start
     * @param windows opens windows beside the main one
     * @param behindTheScenes where posts and pictures are made
     * @param compared what benches are compared with
     * @param say says in passing what was done
     * @param parts lays parts that were copied on the bench
     * @param written what was read off the meter and written down
     * @param pages writes live pages
     */
    public ShareDesk(
            BenchModel bench,
            DoubleSupplier clockS,
            Documents documents,
            Dialogs dialogs,
            SideWindows windows,
            Executor behindTheScenes,
            ComparePane.Models compared,
            Consumer<String> say,
            Consumer<Scenario> parts,
            Supplier<Map<CheckStep, String>> written,
            PageDesk pages) {
        this.bench = bench;
        this.clockS = clockS;
        this.documents = documents;
        this.dialogs = dialogs;
        this.windows = windows;
        this.behindTheScenes = behindTheScenes;
        this.compared = compared;
        this.say = say;
        this.parts = parts;
        this.written = written;
        this.pages = pages;
    }

    /** Opens the share text or scenario that was copied last. */
    public void paste() {
        Optional<String> text = CopyBoard.text();
        text.ifPresent(words -> documents.openText(words, parts));
        if (text.isEmpty()) {
            tell("share.nothing-copied.title", "share.nothing-copied", ShareText.BEGINNING);
        }
    }

    /** Copies the bench as share text. */
    public void copyShareText() {
        Optional<String> text = ShareText.of(bench.scenario());
        text.ifPresent(CopyBoard::put);
        if (text.isPresent()) {
            say.accept(wording().say("share.copied", text.get().length()));
        } else {
            tell("share.too-large.title", "share.too-large", ShareText.MOST_CHARACTERS / 1024);
        }
    }

    /** Shows the post that explains the bench, to copy or save. */
    public void copyPost() {
        PostPane pane = new PostPane(
                now(),
                pages.nameFor(bench.scenario()),
                wording(),
                exports(),
                LatestTask.in(behindTheScenes),
                new QrPane(bench.scenario(), wording(), exports(), LatestTask.in(behindTheScenes)));
        windows.open(
                wording().say("post.title"), pane, POST_WIDTH, POST_HEIGHT, Modality.WINDOW_MODAL, new Subscriptions());
    }

    /** Shows a picture of the bench, to save or copy. */
    public void exportPicture() {
        Subscriptions subscriptions = new Subscriptions();
        PicturePane pane = new PicturePane(now(), wording(), exports(), LatestTask.in(behindTheScenes), subscriptions);
        windows.open(
                wording().say("picture.title"),
                pane,
                PICTURE_WIDTH,
                PICTURE_HEIGHT,
                Modality.WINDOW_MODAL,
                subscriptions);
    }

    /** Asks where to, and writes the bench there as a page that any browser opens. */
    public void exportPage() {
        Scenario scenario = bench.scenario();
        if (!pages.isReady()) {
            tell("page.none.title", "page.none");
            return;
        }
        exports()
                .ask(windows.owner(), scenario.title(), "html")
                .ifPresent(file -> pages.write(file, scenario, wording(), say));
    }

    /** Asks what a meter shows at a real bench, and makes a bench of it. */
    public void fromMeter() {
        AtomicReference<Stage> window = new AtomicReference<>();
        MeasuredPane pane = new MeasuredPane(wording(), written.get(), found -> leave(window.get(), found));
        window.set(windows.open(
                wording().say("measured.title"),
                pane,
                MEASURED_WIDTH,
                MEASURED_HEIGHT,
                Modality.WINDOW_MODAL,
                new Subscriptions()));
    }

    /** Asks for a bench in one line of words, and makes it. */
    public void fromWords() {
        AtomicReference<Stage> window = new AtomicReference<>();
        Subscriptions subscriptions = new Subscriptions();
        WordsPane pane = new WordsPane(
                CatalogueLoader.builtIn(),
                compared.assess(),
                compared.looks(),
                wording(),
                LatestTask.in(behindTheScenes),
                found -> leave(window.get(), found),
                subscriptions);
        window.set(windows.open(
                wording().say("words.title"), pane, WORDS_WIDTH, WORDS_HEIGHT, Modality.WINDOW_MODAL, subscriptions));
    }

    private void leave(Stage window, Scenario found) {
        window.close();
        documents.openUnsaved(found);
    }

    /** Shows the bench beside another one, corrected where nobody says which. */
    public void compare() {
        compare(Optional.empty());
    }

    /** Puts one on the bench, and another one beside it. */
    public void compare(Scenario one, Scenario other) {
        documents.openUnsaved(one);
        compare(Optional.of(other));
    }

    private void compare(Optional<Scenario> other) {
        Subscriptions subscriptions = new Subscriptions();
        ComparePane pane = new ComparePane(compared, wording(), LatestTask.in(behindTheScenes), subscriptions);
        other.ifPresent(pane::against);
        windows.open(wording().say("compare.title"), pane, COMPARE_WIDTH, COMPARE_HEIGHT, Modality.NONE, subscriptions);
    }

    /** What the bench shows now. */
    private Moment now() {
        return new Moment(bench.assessment(), clockS.getAsDouble());
    }

    private Exports exports() {
        return new Exports(wording(), documents.fileProperty().get().map(Path::getParent));
    }

    private void tell(String titleKey, String key, Object... words) {
        Label text = WrappedLabel.of(wording().say(key, words), "dialog-words");
        dialogs.tell("share-told", wording().say(titleKey), text);
    }

    private Wording wording() {
        return dialogs.wording();
    }
}
