package org.sagwise.ui.start;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** What is written about the present bench, and other benches to try. */
public final class ExamplesColumn extends ColumnScroll {

    private static final PseudoClass PRESENT = PseudoClass.getPseudoClass("present");

    private final BenchModel bench;
    private final VBox about = new VBox();
    private final List<ExampleButton> buttons;
    private String told;

    public ExamplesColumn(
            List<Example> examples,
            Thumbnails thumbnails,
            BenchModel bench,
            Documents documents,
            Wording wording,
            Subscriptions subscriptions) {
        super(subscriptions, "examples");
        this.bench = bench;
        setId("examples");
        about.setId("about-bench");
        about.getStyleClass().add("about-bench");
        Label title = new Label(wording.say("examples.title"));
        title.getStyleClass().add("section-title");
        buttons = examples.stream()
                .map(each -> new ExampleButton(each, thumbnails, documents, wording))
                .toList();
        VBox list = new VBox(title);
        list.getStyleClass().add("example-list");
        list.getChildren().addAll(buttons);
        VBox content = new VBox(about, list);
        content.getStyleClass().add("column");
        setContent(content);
        subscriptions.watch(bench.historyProperty(), now -> update());
    }

    private void update() {
        String words = bench.scenario().about();
        if (!words.equals(told)) {
            told = words;
            about.getChildren().setAll(Markdown.column(words));
            about.setVisible(!words.isBlank());
            about.setManaged(!words.isBlank());
            setVvalue(0);
        }
        buttons.forEach(button -> button.pseudoClassStateChanged(PRESENT, button.shows(bench.scenario())));
    }
}
