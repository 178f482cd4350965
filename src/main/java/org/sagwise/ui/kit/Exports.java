package org.sagwise.ui.kit;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.ui.text.Wording;

/** Saves what is exported where a person says. */
public final class Exports {

    private final Wording wording;
    private final Optional<Path> folder;

    /**
     * @param folder where to begin
     */
    public Exports(Wording wording, Optional<Path> folder) {
        this.wording = wording;
        this.folder = folder;
    }

    /**
     * Asks for a place and saves there.
     *
     * @param title of the bench, of which a name is suggested
     * @param ending of the file's name, without the dot
     * @return what to say about it; empty if the person thought better
     */
    public Optional<String> save(Window window, String title, String ending, byte[] bytes) {
        return ask(window, title, ending).map(path -> write(path, bytes));
    }

    /** Asks for a place; empty if the person thought better. */
    public Optional<Path> ask(Window window, String title, String ending) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(wording.say("export.save.title"));
        chooser.setInitialFileName(FileNames.of(title, wording) + "." + ending);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(ending.toUpperCase(Locale.ROOT), "*." + ending));
        folder.map(Path::toFile).filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
        return Optional.ofNullable(chooser.showSaveDialog(window)).map(File::toPath);
    }

    public String write(Path path, byte[] bytes) {
        return ScenarioFiles.save(path, bytes) instanceof Saved.Failed failed
                ? failed.problem().text(wording.locale())
                : wording.say("export.saved", path.getFileName());
    }
}
