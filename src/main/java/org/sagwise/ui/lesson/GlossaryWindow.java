package org.sagwise.ui.lesson;

import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.report.figure.WordFigure;
import org.sagwise.text.Glossary;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.text.Wording;

/** A window beside the bench with all words that the program explains. */
public final class GlossaryWindow {

    private static final double WIDTH = 520;
    private static final double HEIGHT = 640;

    private final SideWindows windows;
    private final ReadOnlyObjectProperty<AppliedLooks> looks;
    private final Wording wording;
    private final SideWindow window = new SideWindow();

    public GlossaryWindow(SideWindows windows, ReadOnlyObjectProperty<AppliedLooks> looks, Wording wording) {
        this.windows = windows;
        this.looks = looks;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    /** Shows it at one word. */
    public void show(String id) {
        Node entry = window.show(this::open).getScene().lookup("#glossary-" + id);
        if (entry != null) {
            Platform.runLater(entry::requestFocus);
        }
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        ColumnScroll scroll = new ColumnScroll(subscriptions);
        scroll.setId("glossary");
        VBox words = new VBox();
        words.getStyleClass().add("glossary");
        Glossary.in(wording.locale())
                .alphabetical()
                .forEach(entry -> words.getChildren().add(entry(entry, subscriptions)));
        scroll.setContent(words);
        BorderPane page = new BorderPane(scroll);
        return windows.open(wording.say("glossary.title"), page, WIDTH, HEIGHT, Modality.NONE, subscriptions);
    }

    private VBox entry(Glossary.Entry entry, Subscriptions subscriptions) {
        Label term = WrappedLabel.of(entry.term(), "section-title");
        VBox box = new VBox(term, WrappedLabel.of(entry.text(), "glossary-text"));
        WordFigure.of(entry.id(), CatalogueLoader.builtIn(), wording.locale())
                .ifPresent(figure -> box.getChildren().add(1, drawing(figure, subscriptions)));
        box.setId("glossary-" + entry.id());
        box.getStyleClass().add("glossary-entry");
        box.setFocusTraversable(true);
        box.setAccessibleText(entry.term() + ". " + entry.text());
        return box;
    }

    private CanvasLayer drawing(WordFigure figure, Subscriptions subscriptions) {
        CanvasLayer layer = new CanvasLayer(
                (surface, width, height) -> figure.paint(surface, looks.get().theme(), width, height));
        layer.setMinSize(WordFigure.WIDTH, WordFigure.HEIGHT);
        layer.setPrefSize(WordFigure.WIDTH, WordFigure.HEIGHT);
        layer.setMaxSize(WordFigure.WIDTH, WordFigure.HEIGHT);
        subscriptions.onChange(looks, layer::repaint);
        return layer;
    }
}
