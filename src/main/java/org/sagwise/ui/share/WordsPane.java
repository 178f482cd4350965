package org.sagwise.ui.share;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;
import org.sagwise.words.Assumed;
import org.sagwise.words.Complaint;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;

/**
 * A line of words, and under it, as one types, the bench that it says: what was assumed, or what is wrong and where.
 * The last bench that could be read stays to be seen while a line is being changed.
 */
final class WordsPane extends BorderPane {

    private static final int ROWS = 2;

    /** What is shown is not what the line says now. */
    private static final double PALE = 0.35;

    private final Catalogue catalogue;
    private final Function<Scenario, Assessment> assess;
    private final Wording wording;
    private final LatestTask latest;
    private final TextArea line = new TextArea();
    private final VBox answer = new VBox();
    private final Label state = new Label();
    private final SideView preview;
    private final Button put;
    private Optional<Scenario> found = Optional.empty();

    /**
     * @param assess computes everything about a scenario
     * @param latest where it is computed
     * @param onBench takes the bench
     */
    WordsPane(
            Catalogue catalogue,
            Function<Scenario, Assessment> assess,
            LooksModel looks,
            Wording wording,
            LatestTask latest,
            Consumer<Scenario> onBench,
            Subscriptions subscriptions) {
        this.catalogue = catalogue;
        this.assess = assess;
        this.wording = wording;
        this.latest = latest;
        setId("words");
        preview = new SideView("words-preview", looks, wording);
        preview.getStyleClass().add("words-preview");
        preview.show(Optional.empty(), "words.preview", 0);
        put = new Button(wording.say("words.put"));
        put.setId("words-put");
        put.setDefaultButton(true);
        put.setMinWidth(Region.USE_PREF_SIZE);
        put.setOnAction(event -> found.ifPresent(onBench));
        setTop(head());
        setCenter(preview);
        setRight(side());
        state.setId("words-state");
        setBottom(new WindowFoot(state, new WorkLine("words", latest, state, wording), put));
        subscriptions.onChange(looks.property(), preview::repaint);
        line.textProperty().subscribe((before, now) -> read());
        read();
    }

    private VBox head() {
        Label how = WrappedLabel.of(wording.say("words.how"), "quiet");
        line.setId("words-line");
        line.setPromptText(wording.say("words.example"));
        line.setAccessibleText(wording.say("words.line"));
        line.setWrapText(true);
        line.setPrefRowCount(ROWS);
        // A line has no breaks: Enter puts the bench on, and Tab goes on to what can be done with it.
        line.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                event.consume();
                put.fire();
            } else if (event.getCode() == KeyCode.TAB && !event.isShiftDown() && !event.isControlDown()) {
                event.consume();
                if (put.isDisabled()) {
                    answer.getChildren().stream()
                            .filter(Node::isFocusTraversable)
                            .findFirst()
                            .ifPresent(Node::requestFocus);
                } else {
                    put.requestFocus();
                }
            }
        });
        Button example = new Button(wording.say("words.show-example"));
        example.setId("words-show-example");
        example.setMinWidth(Region.USE_PREF_SIZE);
        example.setOnAction(event -> {
            line.setText(wording.say("words.example"));
            line.requestFocus();
            line.end();
        });
        HBox under = new HBox(how, example);
        HBox.setHgrow(how, Priority.ALWAYS);
        how.setMaxWidth(Double.MAX_VALUE);
        under.setAlignment(Pos.CENTER_LEFT);
        under.getStyleClass().add("words-row");
        VBox head = new VBox(line, under);
        head.getStyleClass().add("words-head");
        return head;
    }

    private ScrollPane side() {
        answer.setId("words-answer");
        answer.getStyleClass().add("words-answer");
        ScrollPane scroll = new ScrollPane(answer);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().addAll("plain-scroll", "words-side");
        return scroll;
    }

    private void read() {
        answer.getChildren().clear();
        if (line.getText().isBlank()) {
            found = Optional.empty();
            state.setText(wording.say("words.waiting"));
        } else {
            judge(TradeWords.read(line.getText(), catalogue, wording.locale()));
        }
        put.setDisable(found.isEmpty());
        preview.setOpacity(found.isEmpty() ? PALE : 1);
    }

    private void judge(WordsBench read) {
        found = read.scenario();
        if (read instanceof WordsBench.Built built) {
            tell(built);
        } else if (read instanceof WordsBench.Refused refused) {
            complain(refused.complaints());
        }
    }

    private void tell(WordsBench.Built built) {
        state.setText(wording.say("words.ready"));
        if (!built.assumed().isEmpty()) {
            answer.getChildren().add(WrappedLabel.of(wording.say("words.assumed"), "section-title"));
            for (Assumed each : built.assumed()) {
                answer.getChildren().add(WrappedLabel.of(each.text(wording.locale()), "words-item"));
            }
        }
        latest.ask(
                () -> assess.apply(built.bench()).with(Press.HELD),
                now -> preview.show(Optional.of(now), "words.preview", SideView.spanV(now)));
    }

    private void complain(List<Complaint> complaints) {
        state.setText(wording.say("words.wrong"));
        answer.getChildren().add(WrappedLabel.of(wording.say("words.mend"), "section-title"));
        for (Complaint each : complaints) {
            Hyperlink link = new Hyperlink(each.text(wording.locale()));
            link.setWrapText(true);
            link.setMinHeight(Region.USE_PREF_SIZE);
            link.getStyleClass().add("words-item");
            link.setOnAction(event -> mark(each));
            answer.getChildren().add(link);
        }
    }

    /** Picks out the place in the line. */
    private void mark(Complaint complaint) {
        line.requestFocus();
        line.selectRange(complaint.span().start(), complaint.span().end());
    }
}
