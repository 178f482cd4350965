package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.ui.analysis.ReadingsButton;
import org.sagwise.ui.bench.FireView;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.Crowding;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** The strip across the top: menus, title, fire button, and what opens clock and readings. */
final class Header extends HBox {

    private final BenchModel bench;
    private final Documents documents;
    private final Wording wording;

    /** Least width of the title for it to say anything, in pixels at the usual size of text. */
    private static final double LEAST_TITLE = 90;

    /** The menus, which nothing can stand for, move closer together. */
    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");

    private final LooksModel looks;
    private final ReadingsButton readings;
    private final HBox middle;
    private final List<List<Node>> crowded;
    private final Label title = new Label();
    private final Label file = new Label();

    Header(
            FireView fire,
            MenuBar menus,
            ToggleButton clock,
            ReadingsButton readings,
            BenchModel bench,
            Documents documents,
            LooksModel looks,
            Wording wording,
            Subscriptions subscriptions) {
        this.bench = bench;
        this.documents = documents;
        this.looks = looks;
        this.readings = readings;
        this.wording = wording;
        getStyleClass().add("header");
        setAlignment(Pos.CENTER_LEFT);
        title.setId("bench-title");
        file.setId("bench-file");
        title.getStyleClass().add("bench-title");
        file.getStyleClass().add("quiet");
        middle = new HBox(title, file);
        middle.getStyleClass().add("bench-names");
        middle.setAlignment(Pos.CENTER);
        HBox.setHgrow(middle, Priority.ALWAYS);
        title.setMinWidth(0);
        file.setMinWidth(0);
        menus.setMinWidth(USE_PREF_SIZE);
        crowded = List.of(List.of(middle), List.of(fire.words()), List.of(clock), List.of(fire.latch()));
        getChildren().addAll(menus, middle, fire, clock, readings);
        subscriptions.onChange(bench.historyProperty(), this::update);
        subscriptions.onChange(widthProperty(), this::arrange);
        subscriptions.onChange(looks.property(), this::arrange);
        subscriptions.onChange(readings.graphicProperty(), this::arrange);
        subscriptions.onChange(readings.textProperty(), this::arrange);
        subscriptions.watch(documents.fileProperty(), now -> update());
    }

    /** The column with the readings is open, or closed. */
    void tellReadings(boolean open) {
        readings.setOpen(open);
    }

    /** The title stands on the window's edge too. */
    private void arrange() {
        middle.setMinWidth(LEAST_TITLE * looks.get().textScale());
        pseudoClassStateChanged(TIGHT, false);
        Crowding.relieve(this, crowded);
        if (Crowding.isTooWide(this)) {
            pseudoClassStateChanged(TIGHT, true);
            Crowding.relieve(this, crowded);
        }
    }

    private void update() {
        Optional<Path> path = documents.fileProperty().get();
        boolean saved = bench.history().isSaved() || documents.lentProperty().getValue();
        title.setText(titleOf(bench, wording));
        Tip.put(title, title.getText());
        String name = path.map(p -> p.getFileName().toString()).orElse("");
        file.setText(saved ? name : wording.say("header.unsaved", name).strip());
        file.setManaged(!file.getText().isEmpty());
        Tip.put(file, path.map(Path::toString).orElse(""));
    }

    /** The title of the document, or what to call one without. */
    static String titleOf(BenchModel bench, Wording wording) {
        String title = bench.scenario().title().strip();
        return title.isEmpty() ? wording.say("header.untitled") : title;
    }
}
