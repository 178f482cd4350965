package org.sagwise.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.application.Platform;
import org.sagwise.cli.WindowObstacle;
import org.sagwise.cli.WindowOpener;
import org.sagwise.cli.WindowRequest;
import org.sagwise.ui.Overture;
import org.sagwise.ui.SagwiseApp;

/** Opens the bench as a JavaFX window. Nothing of JavaFX is loaded before it is asked to. */
final class FxWindow implements WindowOpener {

    @Override
    public Optional<WindowObstacle> obstacle() {
        if (isLinux() && isBlank(System.getenv("DISPLAY")) && !isDrawnInMemory()) {
            return Optional.of(WindowObstacle.NO_DISPLAY);
        }
        Overture.begin();
        GraphicsCard.passOver();
        ClassPathNotice.keepQuiet();
        return startingToolkit();
    }

    @Override
    public int open(WindowRequest request) {
        ClassPathNotice.keepQuiet();
        Application.launch(PagedApp.class, parameters(request));
        return 0;
    }

    /** JavaFX hands on words alone; named ones begin with two dashes. */
    private static String[] parameters(WindowRequest request) {
        Stream<String> language =
                request.language().stream().map(tag -> "--" + SagwiseApp.LANGUAGE + "=" + tag.toLanguageTag());
        Stream<String> file = request.file().stream().map(Path::toAbsolutePath).map(Path::toString);
        Stream<String> demo = request.demo().stream().map(name -> "--" + SagwiseApp.DEMO + "=" + name);
        Stream<String> words = request.words().stream().map(line -> "--" + SagwiseApp.WORDS + "=" + line);
        return Stream.of(language, demo, words, file).flatMap(each -> each).toArray(String[]::new);
    }

    /** The surest test is the attempt: a display may be named that nobody serves. */
    private static Optional<WindowObstacle> startingToolkit() {
        try {
            Platform.startup(Overture::goOn);
            return Optional.empty();
        } catch (UnsupportedOperationException refused) {
            return Optional.of(named(refused));
        } catch (RuntimeException failed) {
            if (failed.getCause() instanceof UnsatisfiedLinkError) {
                return Optional.of(WindowObstacle.NO_LIBRARIES);
            }
            throw failed;
        }
    }

    /** JavaFX tells its two refusals on Linux apart by their message alone. */
    private static WindowObstacle named(UnsupportedOperationException refused) {
        String message = String.valueOf(refused.getMessage());
        if (message.contains("DISPLAY")) {
            return WindowObstacle.NO_DISPLAY;
        }
        if (message.contains("GTK")) {
            return WindowObstacle.NO_LIBRARIES;
        }
        throw refused;
    }

    private static boolean isLinux() {
        return System.getProperty("os.name").equals("Linux");
    }

    /** Tests draw in memory and need no display. */
    private static boolean isDrawnInMemory() {
        return "Monocle".equals(System.getProperty("glass.platform"));
    }

    private static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }
}
