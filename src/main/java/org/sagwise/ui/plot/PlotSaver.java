package org.sagwise.ui.plot;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.PlotCsv;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.report.picture.PlotPicture;
import org.sagwise.ui.kit.CopyBoard;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** Saves what a plot shows, as a picture or as a table. */
public final class PlotSaver {

    private static final PictureSize SIZE = new PictureSize(1200, 800);

    private final PlotView view;
    private final Supplier<String> title;
    private final Consumer<String> tell;
    private final Exports exports;
    private final Wording wording;

    /**
     * @param title what stands above the picture
     * @param tell hears what was saved, or why it was not
     */
    public PlotSaver(PlotView view, Supplier<String> title, Consumer<String> tell, Exports exports, Wording wording) {
        this.view = view;
        this.title = title;
        this.tell = tell;
        this.exports = exports;
        this.wording = wording;
        ContextMenu menu = new ContextMenu();
        menu.getItems().setAll(items());
        view.setOnContextMenuRequested(event -> menu.show(view, event.getScreenX(), event.getScreenY()));
    }

    /** A button that does the same as the menu of the plot. */
    public MenuButton button() {
        MenuButton button = new MenuButton(wording.say("plot.save"));
        Tip.put(button, wording.say("plot.save.tip"));
        button.getItems().setAll(items());
        button.setId("plot-save");
        button.setMinWidth(MenuButton.USE_PREF_SIZE);
        return button;
    }

    private List<MenuItem> items() {
        return List.of(
                item("plot.save-picture", PictureFormat.PNG.name(), () -> picture(PictureFormat.PNG)),
                item("plot.save-picture", PictureFormat.SVG.name(), () -> picture(PictureFormat.SVG)),
                item("plot.save-table", "CSV", () -> save("csv", table())),
                item("plot.copy-table", "", this::copy));
    }

    private MenuItem item(String key, String format, Runnable deed) {
        String word = wording.say(key);
        MenuItem item = new MenuItem(format.isEmpty() ? word : word + " (" + format + ")");
        item.setId(key.replace('.', '-') + (format.isEmpty() ? "" : "-" + format.toLowerCase(Locale.ROOT)));
        item.setOnAction(event -> deed.run());
        return item;
    }

    private void picture(PictureFormat format) {
        save(format.ending(), painted(format));
    }

    private byte[] painted(PictureFormat format) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new PlotPicture(title.get(), view.chart(), view.now())
                    .write(format, wording.locale(), Theme.LIGHT, SIZE, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private byte[] table() {
        return PlotCsv.of(view.chart()).getBytes(StandardCharsets.UTF_8);
    }

    private void copy() {
        CopyBoard.put(PlotCsv.of(view.chart()));
        tell.accept(wording.say("plot.copied"));
    }

    private void save(String ending, byte[] bytes) {
        exports.save(view.getScene().getWindow(), title.get(), ending, bytes).ifPresent(tell);
    }
}
