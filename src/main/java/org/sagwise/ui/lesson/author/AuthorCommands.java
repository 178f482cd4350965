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

/**
 * What can be done with lessons of one's own.
 *
 * @param open asks for a folder and opens it
 * @param author turns what is to be mended on and off
 * @param again reads the folder once more
 * @param putAway closes the folder
 * @param forget empties the list of folders
 * @param openFolder opens a folder that is known
 */
public record AuthorCommands(
        Command open, Command author, Command again, Command putAway, Command forget, Consumer<Path> openFolder) {

    /**
     * @param opened told that a folder was opened, to show it
     */
    public static AuthorCommands of(
            AuthorController desk, PreferencesModel preferences, Stage stage, Dialogs dialogs, Runnable opened) {
        BooleanBinding none =
                Bindings.createBooleanBinding(() -> desk.folderProperty().get().isEmpty(), desk.folderProperty());
        Consumer<Path> open = folder -> {
            desk.open(folder, () -> tellNothing(folder, dialogs));
            opened.run();
        };
        return new AuthorCommands(
                Command.of("lessons-open", () -> choose(desk, stage, dialogs.wording(), open))
                        .by("Shortcut+Shift+O"),
                Command.of("author", desk::toggleAuthoring).by("Shortcut+Shift+A"),
                Command.of("lessons-again", desk::readAgain).unless(none),
                Command.of("lessons-away", desk::putAway).unless(none),
                Command.of("forget-lessons", () -> preferences.change(now -> now.withRecentLessons(List.of()))),
                open);
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
