package org.sagwise.ui.analysis;

import java.util.function.Consumer;
import javafx.scene.layout.BorderPane;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.reading.NamedReading;
import org.sagwise.ui.bench.SpaceBar;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** A window beside the bench with the table of parts and readings; the button works there too. */
public final class ReadingsWindow {

    private static final double WIDTH = 915;
    private static final double HEIGHT = 420;

    private final SideWindows windows;
    private final BenchModel bench;
    private final LooksModel looks;
    private final Consumer<NamedReading> vary;
    private final Wording wording;
    private final SideWindow window = new SideWindow();

    /**
     * @param vary shows a reading over a value
     */
    public ReadingsWindow(
            SideWindows windows, BenchModel bench, Consumer<NamedReading> vary, LooksModel looks, Wording wording) {
        this.windows = windows;
        this.bench = bench;
        this.looks = looks;
        this.vary = vary;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        Stage stage = windows.open(
                wording.say("table.title"),
                new BorderPane(new ReadingsTable(bench, vary, looks, wording, subscriptions)),
                WIDTH,
                HEIGHT,
                Modality.NONE,
                subscriptions);
        SpaceBar.holds(bench.button(), stage, subscriptions);
        return stage;
    }
}
