package org.sagwise.ui.document;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.FileNames;
import org.sagwise.ui.kit.WrappedLabel;

/** Asks about files in dialogs of a window, with the system's own dialogs for choosing. */
public final class StageFileDialogs implements FileDialogs {

    private final Stage stage;
    private final Supplier<Dialogs> current;

    /**
     * @param current makes dialogs in the present language
     */
    public StageFileDialogs(Stage stage, Supplier<Dialogs> current) {
        this.stage = stage;
        this.current = current;
    }

    @Override
    public Optional<Path> chooseToOpen(Optional<Path> folder) {
        return path(chooser("files.open.title", folder).showOpenDialog(stage));
    }

    @Override
    public Optional<Path> chooseToSave(Optional<Path> folder, String title) {
        FileChooser chooser = chooser("files.save.title", folder);
        chooser.setInitialFileName(FileNames.of(title, dialogs().wording()) + Documents.ENDING);
        return path(chooser.showSaveDialog(stage));
    }

    @Override
    public boolean mayReplace(Path file) {
        ButtonType replace = dialogs().agree("files.replace.do");
        return dialogs()
                .ask(
                        "replace",
                        say("files.replace.title", file.getFileName()),
                        text("files.replace.text", file.getParent()),
                        List.of(replace, dialogs().leave("dialog.cancel")))
                .filter(replace::equals)
                .isPresent();
    }

    @Override
    public Unsaved askAboutUnsaved(String title) {
        ButtonType save = dialogs().agree("files.unsaved.save");
        ButtonType discard = dialogs().other("files.unsaved.discard");
        Optional<ButtonType> answer = dialogs()
                .ask(
                        "unsaved",
                        say("files.unsaved.title", title.isBlank() ? say("header.untitled") : title),
                        text("files.unsaved.text"),
                        List.of(save, discard, dialogs().leave("dialog.cancel")));
        if (answer.filter(save::equals).isPresent()) {
            return Unsaved.SAVE;
        }
        return answer.filter(discard::equals).isPresent() ? Unsaved.DISCARD : Unsaved.STAY;
    }

    @Override
    public Overwrite askAboutChanged(Path file) {
        ButtonType keep = dialogs().agree("files.changed.keep");
        ButtonType elsewhere = dialogs().other("files.changed.elsewhere");
        Optional<ButtonType> answer = dialogs()
                .ask(
                        "changed",
                        say("files.changed.title", file.getFileName()),
                        text("files.changed.text"),
                        List.of(keep, elsewhere, dialogs().leave("dialog.cancel")));
        if (answer.filter(keep::equals).isPresent()) {
            return Overwrite.KEEP_COPY;
        }
        return answer.filter(elsewhere::equals).isPresent() ? Overwrite.SAVE_ELSEWHERE : Overwrite.STAY;
    }

    @Override
    public NextStep showTroubles(Path file, List<ScenarioStore.Trouble> troubles) {
        ButtonType again = dialogs().agree("files.troubles.again");
        return dialogs()
                        .ask(
                                "troubles",
                                say("files.troubles.title", file.getFileName()),
                                list(file, troubles),
                                List.of(again, dialogs().leave("dialog.close")))
                        .filter(again::equals)
                        .isPresent()
                ? NextStep.READ_AGAIN
                : NextStep.LEAVE_IT;
    }

    @Override
    public void showTextTroubles(List<ScenarioStore.Trouble> troubles) {
        VBox content = new VBox(text("files.paste.troubles"), rows(troubles));
        content.getStyleClass().addAll("dialog-words", "text-troubles");
        dialogs().tell("paste-troubles", say("files.paste.title"), content);
    }

    @Override
    public void showNoCopy(Path file) {
        dialogs().tell("no-copy", say("files.not-written.title", file.getFileName()), text("files.no-copy.text"));
    }

    @Override
    public void showNotWritten(Path file, String why) {
        VBox content = new VBox(text("files.not-written.text", file), WrappedLabel.of(why));
        content.getStyleClass().add("dialog-words");
        dialogs().tell("not-written", say("files.not-written.title", file.getFileName()), content);
    }

    private Node list(Path file, List<ScenarioStore.Trouble> troubles) {
        VBox content = new VBox(text("files.troubles.text", troubles.size()), rows(troubles), quiet(file.toString()));
        content.getStyleClass().addAll("dialog-words", "troubles");
        return content;
    }

    private ScrollPane rows(List<ScenarioStore.Trouble> troubles) {
        VBox rows = new VBox();
        rows.getStyleClass().add("trouble-list");
        for (ScenarioStore.Trouble trouble : troubles) {
            Label place = WrappedLabel.of(trouble.place());
            place.getStyleClass().add("trouble-place");
            Label what = WrappedLabel.of(trouble.text());
            what.getStyleClass().add("trouble-text");
            VBox row = new VBox(what);
            if (!trouble.place().isEmpty()) {
                row.getChildren().add(0, place);
            }
            row.getStyleClass().add("trouble");
            rows.getChildren().add(row);
        }
        ScrollPane scroll = new ScrollPane(rows);
        scroll.setId("trouble-scroll");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("plain-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        return scroll;
    }

    private Dialogs dialogs() {
        return current.get();
    }

    private String say(String key, Object... words) {
        return dialogs().wording().say(key, words);
    }

    private Label text(String key, Object... words) {
        return WrappedLabel.of(say(key, words));
    }

    private static Label quiet(String words) {
        Label label = WrappedLabel.of(words);
        label.getStyleClass().add("quiet");
        return label;
    }

    private FileChooser chooser(String titleKey, Optional<Path> folder) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(say(titleKey));
        chooser.getExtensionFilters()
                .addAll(
                        // Whoever types over what a dialog has chosen of the name keeps ".json" alone.
                        new FileChooser.ExtensionFilter(say("files.kind"), "*" + Documents.ENDING, "*.json"),
                        new FileChooser.ExtensionFilter(say("files.kind.any"), "*.*"));
        folder.filter(Files::isDirectory).map(Path::toFile).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }

    private static Optional<Path> path(File chosen) {
        return Optional.ofNullable(chosen).map(File::toPath);
    }
}
