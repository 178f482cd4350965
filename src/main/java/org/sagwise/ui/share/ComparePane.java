package org.sagwise.ui.share;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.sagwise.assessment.Assessment;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;
import org.sagwise.ui.kit.ChoiceDialog;
import org.sagwise.ui.kit.CopyBoard;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.text.Wording;

/**
 * The bench beside another one. It follows the bench: whoever changes something there sees here
 * what it does against the other.
 */
public final class ComparePane extends BorderPane {

    /** What is compared, and where others come from. */
    public record Models(
            BenchModel bench,
            Documents documents,
            Function<Scenario, Assessment> assess,
            LooksModel looks,
            List<Example> examples) {}

    private final Models models;
    private final Wording wording;
    private final LatestTask latest;
    private final SideView first;
    private final SideView second;
    private final BlockWords words = new BlockWords();
    private final ChoiceDialog<Press> press;
    private final Label state = new Label();
    private final Button copy = new Button();
    private final Button put = new Button();
    private Other other = new Other.Corrected();
    private Optional<Sides> sides = Optional.empty();

    public ComparePane(Models models, Wording wording, LatestTask latest, Subscriptions subscriptions) {
        this.models = models;
        this.wording = wording;
        this.latest = latest;
        setId("compare");
        first = new SideView("compare-first", models.looks(), wording);
        second = new SideView("compare-second", models.looks(), wording);
        press = new ChoiceDialog<>(
                "compare-press",
                wording.say("picture.press"),
                List.of(Press.HELD, Press.RELEASED),
                each -> each.name().toLowerCase(Locale.ROOT),
                each -> wording.say("picture.press." + each.name().toLowerCase(Locale.ROOT)));
        setTop(head());
        setCenter(middle());
        setBottom(foot());
        subscriptions.onChange(press.chosenProperty(), this::show);
        subscriptions.onChange(models.looks().property(), this::show);
        subscriptions.watch(models.bench().historyProperty().map(history -> history.present()), scenario -> work());
    }

    /** Sets the bench beside this one. */
    public void against(Scenario scenario) {
        compareWith(new Other.Chosen(scenario));
    }

    private HBox head() {
        MenuButton with = new MenuButton(wording.say("compare.with"));
        with.setId("compare-with");
        with.getStyleClass().add("compare-with");
        Tip.put(with, wording.say("compare.with.tip"));
        Menu examples = new Menu(wording.say("compare.with.examples"));
        for (Example example : models.examples()) {
            Scenario scenario = example.scenario(wording.locale());
            MenuItem item = new MenuItem(scenario.title());
            item.setId("compare-with-" + example.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> compareWith(new Other.Chosen(scenario)));
            examples.getItems().add(item);
        }
        with.getItems()
                .addAll(
                        item("corrected", () -> compareWith(new Other.Corrected())),
                        item("file", () -> compareWith(models.documents().chooseOther())),
                        item("copied", () -> compareWith(CopyBoard.text().flatMap(models.documents()::readText))),
                        item(
                                "this",
                                () -> compareWith(
                                        new Other.Chosen(models.bench().scenario()))),
                        examples);
        HBox head = new HBox(with, press);
        head.setAlignment(Pos.BOTTOM_LEFT);
        head.getStyleClass().add("window-row");
        return head;
    }

    private MenuItem item(String key, Runnable action) {
        MenuItem item = new MenuItem(wording.say("compare.with." + key));
        item.setId("compare-with-" + key);
        item.setOnAction(event -> action.run());
        return item;
    }

    private HBox middle() {
        ScrollPane scroll = new ScrollPane(words);
        scroll.setId("compare-words");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(true);
        scroll.getStyleClass().addAll("plain-scroll", "compare-words");
        HBox middle = new HBox(first, second, scroll);
        middle.getStyleClass().add("compare-middle");
        Stream.<Region>of(first, second).forEach(side -> HBox.setHgrow(side, Priority.ALWAYS));
        return middle;
    }

    private HBox foot() {
        state.setId("compare-state");
        copy.setText(wording.say("compare.copy"));
        copy.setId("compare-copy");
        copy.setOnAction(event -> sides.ifPresent(this::copy));
        put.setText(wording.say("compare.put"));
        put.setId("compare-put");
        put.setOnAction(event ->
                sides.flatMap(Sides::second).map(Assessment::scenario).ifPresent(models.documents()::openUnsaved));
        Stream.<Region>of(copy, put).forEach(each -> each.setMinWidth(USE_PREF_SIZE));
        return new WindowFoot(state, new WorkLine("compare", latest, state, wording), copy, put);
    }

    private void compareWith(Optional<Scenario> chosen) {
        chosen.ifPresent(scenario -> compareWith(new Other.Chosen(scenario)));
    }

    private void compareWith(Other chosen) {
        other = chosen;
        work();
    }

    private void work() {
        Scenario scenario = models.bench().scenario();
        Other with = other;
        state.setText(wording.say("compare.working"));
        latest.ask(() -> Sides.of(scenario, with, models.assess(), wording.locale()), (Consumer<Sides>) found -> {
            sides = Optional.of(found);
            show();
        });
    }

    private void show() {
        sides.ifPresent(this::show);
    }

    private void show(Sides now) {
        Assessment one = now.first().with(press.get());
        Optional<Assessment> two = now.second().map(it -> it.with(press.get()));
        double spanV = Math.max(SideView.spanV(one), two.map(SideView::spanV).orElse(0.0));
        first.show(Optional.of(one), "compare.first-title", spanV);
        second.show(two, now.isCure() ? "compare.cured-title" : "compare.second-title", spanV);
        words.show(two.isPresent() ? now.words() : List.of(new Block.Paragraph(wording.say("compare.nothing"))));
        nodesOfSecond().forEach(node -> node.setDisable(two.isEmpty()));
        state.setText(wording.say("compare.state"));
    }

    private Stream<Node> nodesOfSecond() {
        return Stream.of(copy, put);
    }

    private void copy(Sides now) {
        CopyBoard.put(PostFormat.MARKDOWN.write(now.words(), wording.locale(), Signs.PRINT));
        state.setText(wording.say("compare.copied"));
    }
}
