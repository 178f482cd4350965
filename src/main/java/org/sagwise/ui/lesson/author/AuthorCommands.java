package org.sagwise.ui.lesson.author;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Label;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.text.Wording;

/** What can be done with lessons of one's own. */
public final class AuthorCommands {

    private AuthorCommands() {}

    /**
     * Opens a folder with lessons.
     *
     * @param opened told that it was opened, to show it
     */
    public static Consumer<Path> opener(AuthorController desk, Dialogs dialogs, Runnable opened) {
        return folder -> {
            desk.open(folder, () -> tellNothing(folder, dialogs));
            opened.run();
        };
    }

    /**
     * @param open opens a folder
     */
    public static List<Command> of(
            AuthorController desk, PreferencesModel preferences, Stage stage, Wording wording, Consumer<Path> open) {
        BooleanBinding none =
                Bindings.createBooleanBinding(() -> desk.folderProperty().get().isEmpty(), desk.folderProperty());
        return List.of(
                Command.of("lessons-open", () -> choose(desk, stage, wording, open))
                        .by("Shortcut+Shift+O"),
                Command.of("author", desk::toggleAuthoring)
                        .by("Shortcut+Shift+A")
                        .ticked(desk.authoring()),
                Command.of("lessons-again", desk::readAgain).unless(none),
                Command.of("lessons-away", desk::putAway).unless(none),
                Command.of("forget-lessons", () -> preferences.change(now -> now.withRecentLessons(List.of()))));
    }

    private static void choose(AuthorController desk, Stage stage, Wording wording, Consumer<Path> chosen) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(wording.say("author.choose"));
        desk.folderProperty()
                .get()
                .or(() -> desk.recent().getValue().stream().findFirst())
                .flatMap(it -> Optional.ofNullable(it.getParent()))
                .filter(Files::isDirectory)
                .map(Path::toFile)
                .ifPresent(chooser::setInitialDirectory);
        Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath).ifPresent(chosen);
    }

    private static void tellNothing(Path folder, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        Label words = new Label(wording.say("author.nothing.text", folder));
        words.setWrapText(true);
        words.getStyleClass().add("dialog-words");
        dialogs.tell("no-lessons", wording.say("author.nothing"), words);
    }
}
