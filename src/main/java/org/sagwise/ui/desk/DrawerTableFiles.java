package org.sagwise.ui.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.stage.FileChooser;
import org.sagwise.file.DrawerCsv;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.ui.kit.Exports;

/** The drawer as a table for spreadsheets: taken in, and written. */
final class DrawerTableFiles {

    private static final int MOST_BYTES = 8 * 1024 * 1024;

    private final DrawerModel model;
    private final DrawerWords words;
    private final Exports exports;
    private final DrawerActions.View view;

    DrawerTableFiles(DrawerModel model, DrawerWords words, Exports exports, DrawerActions.View view) {
        this.model = model;
        this.words = words;
        this.exports = exports;
        this.view = view;
    }

    void load() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(words.say("window.import"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("CSV", "*.csv", "*.txt", "*.tsv"));
        Optional.ofNullable(chooser.showOpenDialog(view.window())).ifPresent(file -> load(file.toPath()));
    }

    /** Adds what a table says; if anything is wrong with it, nothing. */
    private void load(Path file) {
        byte[] bytes;
        try (var stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(MOST_BYTES + 1);
        } catch (IOException failure) {
            view.say(words.say("window.unreadable", file.toString(), String.valueOf(failure.getMessage())));
            return;
        }
        Consumer<DrawerCsv.Read.Ok> done = ok -> view.say(words.say("cli.imported", ok.cells(), ok.measurements()));
        List<String> wrong = model.change(
                drawer -> DrawerCsv.read(bytes, drawer, model.catalogue(), DrawerCsv.Precedence.NEITHER)
                                instanceof DrawerCsv.Read.Refused refused
                        ? refused.findings()
                        : List.of(),
                drawer -> {
                    DrawerCsv.Read.Ok ok = (DrawerCsv.Read.Ok)
                            DrawerCsv.read(bytes, drawer, model.catalogue(), DrawerCsv.Precedence.NEITHER);
                    done.accept(ok);
                    return ok.drawer();
                });
        if (!wrong.isEmpty()) {
            view.say(String.join("\n", wrong));
        }
    }

    void save(DrawerCsv.Style style) {
        byte[] bytes = DrawerCsv.write(model.drawer(), style).getBytes(StandardCharsets.UTF_8);
        exports.save(view.window(), words.say("window.title"), "csv", bytes).ifPresent(view::say);
    }
}
