package org.sagwise.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import org.sagwise.part.PartKind;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.edit.History;
import org.sagwise.ui.bench.ViewModel;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.settings.LooksChoice;
import org.sagwise.ui.settings.Motion;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Shown;
import org.sagwise.ui.settings.Sound;
import org.sagwise.ui.text.Wording;

/** What can be done with the document and with how the window shows it, whatever lies on the bench. */
final class WindowCommands {

    private static final int TEXT_STEP = 25;

    private WindowCommands() {}

    /**
     * @param say tells the person at the bench what was done
     */
    static List<Command> document(BenchModel bench, Documents documents, Consumer<String> say, Wording wording) {
        ObservableValue<History> history = bench.historyProperty();
        BooleanBinding noFile = Bindings.createBooleanBinding(
                () -> documents.fileProperty().get().isEmpty(), documents.fileProperty());
        BooleanBinding noButton = Bindings.createBooleanBinding(
                () -> bench.scenario().partsOf(PartKind.SWITCH).isEmpty(), bench.historyProperty());
        BooleanBinding nothingToUndo =
                Bindings.createBooleanBinding(() -> bench.history().undoable().isEmpty(), bench.historyProperty());
        BooleanBinding nothingToRedo =
                Bindings.createBooleanBinding(() -> bench.history().redoable().isEmpty(), bench.historyProperty());
        return List.of(
                Command.of("open", documents::open).by("Shortcut+O"),
                Command.of("reread", documents::reread).by("F5").unless(noFile),
                Command.of("save", documents::save).by("Shortcut+S"),
                Command.of("save-as", documents::saveAs).by("Shortcut+Shift+S"),
                Command.of("undo", () -> {
                            Optional<String> edit = bench.history().undoable();
                            bench.undo();
                            edit.ifPresent(it -> say.accept(wording.say("status.undone", it)));
                        })
                        .by("Shortcut+Z")
                        .unless(nothingToUndo)
                        .named(history.map(now -> now.undoable()
                                .map(edit -> wording.say("command.undo.named", edit))
                                .orElseGet(() -> wording.say("command.undo")))),
                Command.of("redo", () -> {
                            Optional<String> edit = bench.history().redoable();
                            bench.redo();
                            edit.ifPresent(it -> say.accept(wording.say("status.redone", it)));
                        })
                        .by("Shortcut+Shift+Z")
                        .unless(nothingToRedo)
                        .named(history.map(now -> now.redoable()
                                .map(edit -> wording.say("command.redo.named", edit))
                                .orElseGet(() -> wording.say("command.redo")))),
                Command.of("latch", bench.button()::toggleLatch)
                        .by("Shortcut+L")
                        .unless(noButton)
                        .ticked(bench.button().latchedProperty()));
    }

    static List<Command> looks(PreferencesModel preferences, ViewModel view) {
        ObservableValue<Preferences> now = preferences.property();
        List<Command> commands = new ArrayList<>(List.of(
                Command.of("zoom-in", view::zoomIn).by("Shortcut+Plus"),
                Command.of("zoom-out", view::zoomOut).by("Shortcut+Minus"),
                Command.of("fit", view::fit).by("Shortcut+0"),
                change("text-larger", preferences, it -> it.withTextPercent(it.textPercent() + TEXT_STEP))
                        .by("Shortcut+Shift+Plus"),
                change("text-smaller", preferences, it -> it.withTextPercent(it.textPercent() - TEXT_STEP))
                        .by("Shortcut+Shift+Minus"),
                change("schematic", preferences, WindowCommands::turnDrawing)
                        .by("Shift+F9")
                        .ticked(now.map(it -> it.drawing() == Drawing.SCHEMATIC)),
                change("less-motion", preferences, WindowCommands::turnMotion)
                        .ticked(now.map(it -> it.motion() == Motion.REDUCED)),
                change("sound", preferences, WindowCommands::turnSound).ticked(now.map(it -> it.sound() == Sound.ON)),
                change("language-system", preferences, it -> it.withLanguage(""))
                        .chosen(now.map(it -> it.language().isEmpty())),
                change("forget-recent", preferences, it -> it.withRecent(List.of()))));
        for (LooksChoice choice : LooksChoice.values()) {
            String word = choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
            commands.add(change("looks-" + word, preferences, it -> it.withLooks(choice))
                    .chosen(now.map(it -> it.looks() == choice)));
        }
        return commands;
    }

    /** Whether the column at the left is wanted. */
    static ObservableValue<Boolean> isColumnWanted(PreferencesModel preferences) {
        return preferences.property().map(it -> it.examples() == Shown.SHOWN);
    }

    private static Command change(String id, PreferencesModel preferences, UnaryOperator<Preferences> change) {
        return Command.of(id, () -> preferences.change(change));
    }

    private static Preferences turnDrawing(Preferences now) {
        return now.withDrawing(now.drawing() == Drawing.BENCH ? Drawing.SCHEMATIC : Drawing.BENCH);
    }

    private static Preferences turnSound(Preferences now) {
        return now.withSound(now.sound() == Sound.ON ? Sound.OFF : Sound.ON);
    }

    private static Preferences turnMotion(Preferences now) {
        return now.withMotion(now.motion() == Motion.REDUCED ? Motion.FULL : Motion.REDUCED);
    }
}
