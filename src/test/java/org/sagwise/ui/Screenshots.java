package org.sagwise.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Spinner;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;

/**
 * Walks the real window over all demo scenarios and takes pictures of the screen, for people to
 * look at. Started by scripts/screenshots on a display of its own.
 */
public final class Screenshots extends Application {

    private static final Duration SETTLE = Duration.millis(450);
    private static final Duration LOOK = Duration.millis(250);
    private static final int MOST_LOOKS = 12;

    private final SagwiseApp app = new SagwiseApp();
    private final Deque<Runnable> steps = new ArrayDeque<>();
    private List<String> files = List.of();
    private Path folder;
    private String prefix;

    @Override
    public void init() {
        List<String> parameters = getParameters().getRaw();
        folder = Path.of(parameters.get(0));
        prefix = parameters.get(1);
        String what = parameters.get(3);
        switch (what) {
            case "demos" -> DemoScenarios.names().forEach(this::demo);
            case "dialogs" -> dialogs();
            case "clock" -> clock();
            case "instructor" -> lead();
            case "author" -> author();
            case "together" -> together();
            case "grid" -> new Grid(this::add, this::wait, this::take).walk(parameters.get(4));
            case "lessons" -> LessonLibrary.ids().forEach(this::lesson);
            default -> demoOrLesson(what);
        }
        steps.add(Platform::exit);
    }

    @Override
    public void start(Stage stage) {
        app.open(stage, files, Optional.empty(), "");
        Rectangle2D screen = Screen.getPrimary().getBounds();
        new Robot().mouseMove(screen.getWidth() / 2, 2);
        PauseTransition settled = new PauseTransition(SETTLE.multiply(4));
        settled.setOnFinished(event -> {
            // A busy machine may have answered late with a size that nobody asked for.
            stage.setWidth(screen.getWidth());
            stage.setHeight(screen.getHeight());
            next();
        });
        settled.play();
    }

    @Override
    public void stop() {
        app.stop();
    }

    private void next() {
        Runnable step = steps.poll();
        if (step != null) {
            // A dialog waits inside the step that opened it; the walk goes on meanwhile.
            await(SETTLE, () -> whenStill(0, MOST_LOOKS));
            step.run();
        }
    }

    /**
     * Goes on once the screen shows the same twice: the bench is painted behind the scenes, which
     * takes its time on a busy machine. What moves for ever is not waited for.
     */
    private void whenStill(int before, int looks) {
        int now = look();
        if (now == before || looks == 0) {
            next();
        } else {
            await(LOOK, () -> whenStill(now, looks - 1));
        }
    }

    private static int look() {
        WritableImage image =
                new Robot().getScreenCapture(null, Screen.getPrimary().getBounds());
        int width = (int) image.getWidth();
        int[] row = new int[width];
        int sum = 1;
        for (int y = 0; y < (int) image.getHeight(); y++) {
            image.getPixelReader().getPixels(0, y, width, 1, PixelFormat.getIntArgbInstance(), row, 0, width);
            sum = 31 * sum + Arrays.hashCode(row);
        }
        return sum;
    }

    private static void await(Duration time, Runnable then) {
        PauseTransition pause = new PauseTransition(time);
        pause.setOnFinished(event -> then.run());
        pause.play();
    }

    private void demo(String name) {
        steps.add(() -> WindowHands.choose("item-example-" + name));
        steps.add(() -> {});
        steps.add(() -> take(name + "-rest"));
        steps.add(() -> WindowHands.press("latch"));
        steps.add(() -> take(name + "-fired"));
    }

    private void demoOrLesson(String what) {
        if (LessonLibrary.ids().contains(what)) {
            lesson(what);
        } else {
            demo(what);
        }
    }

    /** Every step of a lesson: as it begins, and once the first answer is given or it is shown. */
    private void lesson(String id) {
        steps.add(() -> WindowHands.choose("item-lesson-" + id));
        steps.add(() -> {});
        for (int i = 1; i <= stepsOf(id); i++) {
            String name = String.format(Locale.ROOT, "%s-%02d", id, i);
            steps.add(() -> take(name + "-a"));
            steps.add(Screenshots::answer);
            steps.add(() -> take(name + "-b"));
            steps.add(() -> WindowHands.press("button-lesson-next"));
        }
        steps.add(() -> take(id + "-end"));
        steps.add(() -> WindowHands.choose("item-lesson-leave"));
    }

    private static int stepsOf(String id) {
        return new LessonReader(CatalogueLoader.builtIn())
                .read(LessonLibrary.source(id))
                .lesson()
                .orElseThrow()
                .steps()
                .size();
    }

    /**
     * The instructor's window over a question with a vote, and the class's window on a projector.
     */
    private void lead() {
        steps.add(() -> WindowHands.choose("item-instructor"));
        steps.add(() -> {});
        steps.add(() -> take("instructor-none"));
        steps.add(() -> WindowHands.press("instructor-lesson-06-same-watts"));
        steps.add(() -> vote(1, "4"));
        steps.add(() -> vote(2, "5"));
        steps.add(() -> vote(4, "9"));
        steps.add(() -> WindowHands.press("tally-again"));
        steps.add(() -> vote(1, "2"));
        steps.add(() -> vote(2, "3"));
        steps.add(() -> vote(4, "13"));
        steps.add(() -> WindowHands.press("tally-turn"));
        steps.add(() -> {});
        steps.add(() -> take("instructor-vote"));
        steps.add(WindowHands::closeTop);
        steps.add(() -> take("instructor-shown"));
        steps.add(() -> WindowHands.choose("item-projector"));
        steps.add(() -> {});
        steps.add(() -> take("projector"));
        steps.add(() -> WindowHands.press("choice-4"));
        steps.add(() -> WindowHands.press("button-lesson-next"));
        steps.add(() -> take("projector-measure"));
    }

    /** Two benches on one clock: on the way, at their end, and for a class that looks on. */
    private void together() {
        steps.add(() -> WindowHands.choose("item-instructor"));
        wait(1);
        steps.add(() -> WindowHands.press("instructor-lesson-06-same-watts"));
        steps.add(() -> WindowHands.press("instructor-step-7"));
        steps.add(WindowHands::closeTop);
        steps.add(() -> WindowHands.press("speed-600"));
        steps.add(() -> WindowHands.press("latch"));
        steps.add(() -> WindowHands.press("clock-go"));
        wait(6);
        steps.add(() -> take("together-going"));
        wait(24);
        steps.add(() -> take("together-end"));
        steps.add(() -> WindowHands.choose("item-projector"));
        wait(1);
        steps.add(() -> take("together-projector"));
    }

    /** A lesson of one's own that somebody writes: sound, with a mistake, and broken. */
    private void author() {
        Path lesson = folder.resolve("my-lesson");
        copyLesson("06-same-watts", lesson);
        files = List.of(lesson.toString());
        steps.add(() -> {});
        steps.add(() -> {});
        steps.add(() -> take("author-shelf"));
        steps.add(() -> WindowHands.choose("item-author"));
        steps.add(() -> WindowHands.press("lesson-own-my-lesson"));
        wait(3);
        steps.add(() -> take("author-sound"));
        steps.add(() -> change(lesson, "is: 17.64", "is: 18.64"));
        wait(4);
        steps.add(() -> WindowHands.press("choice-4"));
        steps.add(() -> WindowHands.press("button-lesson-next"));
        wait(2);
        steps.add(() -> take("author-mistake"));
        steps.add(() -> WindowHands.press("author-all"));
        wait(1);
        steps.add(() -> take("author-all"));
        steps.add(() -> change(lesson, "kind: measure", "kind: mesure"));
        wait(4);
        steps.add(() -> WindowHands.press("tab-lesson"));
        steps.add(() -> take("author-broken"));
        steps.add(() -> WindowHands.choose("item-lesson-leave"));
        wait(1);
        steps.add(() -> WindowHands.press("tab-lessons"));
        steps.add(() -> take("author-left"));
    }

    private static void copyLesson(String id, Path target) {
        try {
            Files.createDirectories(target);
            try (Stream<Path> all = Files.list(Path.of("lessons", id))) {
                for (Path each : all.toList()) {
                    Files.copy(each, target.resolve(each.getFileName()), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void change(Path lesson, String before, String after) {
        try {
            Path file = lesson.resolve("lesson.yaml");
            Files.writeString(file, Files.readString(file).replace(before, after));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void vote(int answer, String hands) {
        ((Spinner<?>) WindowHands.node("hands-" + answer)).getEditor().setText(hands);
    }

    private static void answer() {
        WindowHands.find("choice-1")
                .or(() -> WindowHands.find("button-lesson-show"))
                .ifPresent(it -> ((ButtonBase) it).fire());
    }

    private void dialogs() {
        for (String item : List.of("keys", "notice", "about", "title", "table")) {
            steps.add(() -> WindowHands.choose("item-" + item));
            steps.add(() -> {});
            steps.add(() -> {});
            steps.add(() -> take(item));
            steps.add(WindowHands::closeTop);
        }
    }

    /** Time going, a moment turned back to, an event, and a cell that vents. */
    private void clock() {
        steps.add(() -> WindowHands.press("speed-60"));
        steps.add(() -> WindowHands.press("latch"));
        steps.add(() -> WindowHands.press("clock-go"));
        wait(6);
        steps.add(() -> take("clock-going"));
        steps.add(() -> WindowHands.press("latch"));
        steps.add(() -> WindowHands.press("clock-run-down"));
        wait(3);
        steps.add(() -> take("clock-ran-down"));
        steps.add(() -> WindowHands.press("clock-press-back"));
        steps.add(() -> take("clock-turned-back"));
        steps.add(() -> WindowHands.choose("item-example-old-and-new-in-a-row"));
        steps.add(() -> {});
        steps.add(() -> WindowHands.press("speed-10"));
        steps.add(() -> WindowHands.press("clock-go"));
        for (int i = 0; i < 3; i++) {
            steps.add(() -> WindowHands.press("latch"));
            wait(2);
            steps.add(() -> WindowHands.press("latch"));
            wait(3);
        }
        steps.add(() -> take("clock-presses"));
        steps.add(() -> WindowHands.choose("item-example-side-by-side-one-reversed"));
        steps.add(() -> {});
        for (int i = 0; i < 4; i++) {
            steps.add(() -> WindowHands.press("clock-go"));
            wait(5);
        }
        steps.add(() -> take("clock-vented"));
    }

    private void add(Runnable step) {
        steps.add(step);
    }

    private void wait(int times) {
        for (int i = 0; i < times; i++) {
            steps.add(() -> {});
        }
    }

    private void take(String name) {
        Rectangle2D screen = Screen.getPrimary().getBounds();
        save(new Robot().getScreenCapture(null, screen), name);
    }

    private void save(WritableImage image, String name) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        PixelReader pixels = image.getPixelReader();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        String file = String.format(Locale.ROOT, "%s-%s.png", prefix, name);
        try {
            ImageIO.write(copy, "png", folder.resolve(file).toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
