package org.sagwise.ui.document;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Fragment;
import org.sagwise.scenario.edit.History;
import org.sagwise.ui.settings.PreferencesModel;

/**
 * Opens and saves what lies on the bench. Nothing is ever lost without asking: a broken file leaves
 * the bench as it was, and unsaved changes are asked about.
 */
public final class Documents {

    /** How a scenario file's name ends. */
    public static final String ENDING = ".sagwise.json";

    private final BenchModel bench;
    private final ScenarioStore store;
    private final FileDialogs dialogs;
    private final PreferencesModel preferences;
    private final Preparation preparation;
    private final FileWitness witness;
    private final ReadOnlyObjectWrapper<Optional<Path>> file = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Rival> rival = new ReadOnlyObjectWrapper<>(Rival.NONE);
    private final ReadOnlyObjectWrapper<Optional<Aside>> aside = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** Who else works on the file of the document. */
    public enum Rival {
        NONE,
        /** Another window has it open. */
        WINDOW,
        /** Another program, or another window, has written it since it was read or written here. */
        WRITER
    }

    /** A document laid aside while the bench is lent to a lesson. */
    private record Aside(History history, Optional<Path> file) {}

    /**
     * @param preparation what has to be done before a bench can be shown
     * @param witness knows what others did to the file
     */
    public Documents(
            BenchModel bench,
            ScenarioStore store,
            FileDialogs dialogs,
            PreferencesModel preferences,
            Preparation preparation,
            FileWitness witness) {
        this.bench = bench;
        this.store = store;
        this.dialogs = dialogs;
        this.preferences = preferences;
        this.preparation = preparation;
        this.witness = witness;
    }

    /** The file of the present document; empty for an example and for one never saved. */
    public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** Who else works on the file, as far as was seen when it was looked at last. */
    public ReadOnlyObjectProperty<Rival> rivalProperty() {
        return rival.getReadOnlyProperty();
    }

    /** Looks whether somebody else has changed the file meanwhile. */
    public void lookAround() {
        Optional<Path> path = file.get();
        if (path.filter(witness::isChanged).isPresent()) {
            rival.set(Rival.WRITER);
        } else {
            rival.set(path.isPresent() && !witness.isAlone() ? Rival.WINDOW : Rival.NONE);
        }
    }

    /** Asks for a file and opens it. */
    public void open() {
        if (mayLeave()) {
            dialogs.chooseToOpen(folder()).ifPresent(this::load);
        }
    }

    /** Opens a file. */
    public void open(Path path) {
        if (mayLeave()) {
            load(path);
        }
    }

    /**
     * Opens a file if there is nothing to ask about, as before a window is there to ask in.
     *
     * @return whether it did; otherwise nothing has changed
     */
    public boolean openUnasked(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        if (bench.history().isSaved() && store.read(whole) instanceof ScenarioStore.Read read) {
            put(whole, read.scenario());
            return true;
        }
        return false;
    }

    /** Puts a scenario on the bench that has no file of its own. */
    public void openExample(Scenario scenario) {
        if (mayLeave()) {
            whenReady(scenario, () -> {
                belongToNone();
                bench.open(scenario);
            });
        }
    }

    /** Puts a scenario on the bench that is in no file yet, such as one that was worked out. */
    public void openUnsaved(Scenario scenario) {
        openUnsaved(scenario, () -> {});
    }

    /**
     * The same, for what must not be lost before it lies there.
     *
     * @param opened hears that it lies on the bench; never if the person stays with another one
     */
    public void openUnsaved(Scenario scenario, Runnable opened) {
        if (mayLeave()) {
            whenReady(scenario, () -> {
                belongToNone();
                bench.openUnsaved(scenario);
                opened.run();
            });
        }
    }

    /**
     * Opens what somebody handed on as text. What is wrong with it is said before anybody is asked
     * about the present document.
     *
     * @param text a post with share text in it, or what a scenario file holds
     * @param parts takes what says of itself that it is no whole bench
     */
    public void openText(String text, Consumer<Scenario> parts) {
        Optional<Scenario> read = readText(text);
        if (read.filter(Fragment::isMarked).isPresent()) {
            read.ifPresent(parts);
        } else {
            read.ifPresent(this::openUnsaved);
        }
    }

    /** Reads what somebody handed on as text, for looking at; the bench stays as it is. */
    public Optional<Scenario> readText(String text) {
        ScenarioStore.Outcome outcome = store.readText(text);
        if (outcome instanceof ScenarioStore.Refused refused) {
            dialogs.showTextTroubles(refused.troubles());
        }
        return outcome instanceof ScenarioStore.Read read ? Optional.of(read.scenario()) : Optional.empty();
    }

    /** Asks for a file and reads it, for looking at; the bench stays as it is. */
    public Optional<Scenario> chooseOther() {
        return dialogs.chooseToOpen(folder())
                .map(path -> path.toAbsolutePath().normalize())
                .flatMap(this::read);
    }

    /**
     * Lends the bench: the present document is laid aside with everything done to it, and comes
     * back with {@link #giveBack} or as soon as anything else is opened. What is done to the lent
     * bench need not be saved.
     */
    public void lend(Scenario scenario) {
        if (aside.get().isEmpty()) {
            aside.set(Optional.of(new Aside(bench.history(), file.get())));
        }
        file.set(Optional.empty());
        bench.open(scenario);
        lookAround();
    }

    /** Puts the document back that was laid aside; nothing happens if none was. */
    public void giveBack() {
        Optional<Aside> kept = aside.get();
        aside.set(Optional.empty());
        kept.ifPresent(it -> {
            file.set(it.file());
            bench.resume(it.history());
            lookAround();
        });
    }

    /** Whether the bench is lent. */
    public ObservableValue<Boolean> lentProperty() {
        return aside.map(Optional::isPresent);
    }

    /** Reads the present file again, for people who edit it with another program beside this. */
    public void reread() {
        file.get().ifPresent(this::open);
    }

    /**
     * Saves to the file of the document, or asks for one.
     *
     * @return whether it is saved now
     */
    public boolean save() {
        return file.get().map(this::write).orElseGet(this::saveAs);
    }

    /**
     * Asks for a file and saves there.
     *
     * @return whether it is saved now
     */
    public boolean saveAs() {
        Optional<Path> chosen = dialogs.chooseToSave(folder(), bench.scenario().title());
        Optional<Path> ending = chosen.map(Documents::withEnding);
        // The system's dialog has asked about the name that was typed, not about the one we made.
        return ending.filter(path -> chosen.equals(ending) || mayReplace(path))
                .map(this::write)
                .orElse(false);
    }

    /** Whether the present document may go: it is saved, or the person lets it go. */
    public boolean mayLeave() {
        giveBack();
        if (bench.history().isSaved()) {
            return true;
        }
        return switch (dialogs.askAboutUnsaved(bench.scenario().title())) {
            case SAVE -> save();
            case DISCARD -> true;
            case STAY -> false;
        };
    }

    private void load(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        read(whole).ifPresent(scenario -> put(whole, scenario));
    }

    private void put(Path whole, Scenario scenario) {
        whenReady(scenario, () -> {
            belongTo(whole);
            bench.open(scenario);
        });
    }

    /** What was done to the present document while another was made ready is asked about, too. */
    private void whenReady(Scenario scenario, Runnable open) {
        History agreed = bench.history();
        preparation.whenReady(scenario, () -> {
            if (bench.history() == agreed || mayLeave()) {
                open.run();
            }
        });
    }

    private Optional<Scenario> read(Path whole) {
        ScenarioStore.Outcome outcome = store.read(whole);
        while (outcome instanceof ScenarioStore.Refused refused
                && dialogs.showTroubles(whole, refused.troubles()) == FileDialogs.NextStep.READ_AGAIN) {
            outcome = store.read(whole);
        }
        return outcome instanceof ScenarioStore.Read read ? Optional.of(read.scenario()) : Optional.empty();
    }

    private boolean write(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        if (witness.isChanged(whole)) {
            return switch (dialogs.askAboutChanged(whole)) {
                case KEEP_COPY -> writeBeside(whole);
                case SAVE_ELSEWHERE -> saveAs();
                case STAY -> false;
            };
        }
        Optional<String> failure = store.write(whole, bench.scenario());
        failure.ifPresent(why -> dialogs.showNotWritten(whole, why));
        if (failure.isEmpty()) {
            bench.markSaved();
            belongTo(whole);
        }
        return failure.isEmpty();
    }

    /** Writes a file once what it holds is kept; not at all if that cannot be done. */
    private boolean writeBeside(Path whole) {
        if (store.keepCopy(whole).isEmpty()) {
            dialogs.showNoCopy(whole);
            return false;
        }
        witness.accept(whole);
        return write(whole);
    }

    private void belongTo(Path path) {
        witness.belongTo(path);
        file.set(Optional.of(path));
        lookAround();
        preferences.change(now -> now.withOpened(path));
    }

    private void belongToNone() {
        witness.leave();
        file.set(Optional.empty());
        lookAround();
    }

    private Optional<Path> folder() {
        return file.get()
                .or(() -> preferences.get().recent().stream().findFirst())
                .map(Path::getParent);
    }

    private boolean mayReplace(Path path) {
        return !Files.exists(path) || dialogs.mayReplace(path);
    }

    private static Path withEnding(Path path) {
        String name = path.getFileName().toString();
        return name.endsWith(".json") ? path : path.resolveSibling(name + ENDING);
    }
}
