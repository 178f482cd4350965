package org.sagwise.ui.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** Everything that a competent person would be told about the drawn circuit. */
public final class CautionsView extends VBox {

    private static final String UNJUDGED = "cautions.unjudged";

    private final BenchModel bench;
    private final Wording wording;
    private final Consumer<Caution> show;
    private final VBox list = new VBox();
    private final CureModel cures;
    private final Map<Caution, CautionCard> cards = new LinkedHashMap<>();
    private final Label waiting;
    private List<Caution> shown;
    private String instead;

    /**
     * @param show picks a caution out on the bench
     * @param cures what is known against them
     */
    public CautionsView(
            BenchModel bench, Consumer<Caution> show, CureModel cures, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        this.show = show;
        this.cures = cures;
        setId("cautions");
        getStyleClass().add("cautions");
        Label title = new Label(wording.say("cautions.title"));
        title.getStyleClass().add("section-title");
        list.getStyleClass().add("cards");
        waiting = new Label(wording.say("cautions.waiting"));
        waiting.setId("cautions-waiting");
        waiting.setWrapText(true);
        waiting.getStyleClass().add("quiet");
        getChildren().addAll(title, waiting, list);
        subscriptions.watch(bench.assessmentProperty(), this::show);
        subscriptions.onChange(bench.judgedProperty(), () -> show(bench.assessment()));
        subscriptions.watch(cures.property(), this::offer);
        subscriptions.watch(bench.button().lockedProperty(), this::veil);
    }

    private void show(Assessment now) {
        // Pressing the button changes no caution; the cards stay, and so does the focus in them.
        if (now.cautions().equals(shown) && why().equals(instead)) {
            return;
        }
        shown = now.cautions();
        instead = why();
        cards.clear();
        shown.forEach(caution -> cards.put(caution, card(caution)));
        list.getChildren().setAll(cards.values());
        if (shown.isEmpty()) {
            list.getChildren().add(nothing(instead));
        }
        offer(cures.property().get());
    }

    /** Why there is no caution, if there is none. */
    private String why() {
        if (!bench.judgedProperty().get()) {
            return UNJUDGED;
        }
        return bench.nextStepProperty().get() == NextStep.NONE ? "cautions.none" : "cautions.unfinished";
    }

    private void offer(Cures found) {
        cards.forEach((caution, card) -> card.offer(
                found.of(caution).stream().map(offer -> box(offer, found)).toList()));
    }

    private CureBox box(Offer offer, Cures found) {
        return new CureBox(offer, found, wording, () -> cures.make(offer, wording.locale()));
    }

    /** An empty list while a prediction is due must not be taken for a circuit without trouble. */
    private void veil(boolean locked) {
        list.setVisible(!locked);
        list.setManaged(!locked);
        waiting.setVisible(locked);
        waiting.setManaged(locked);
    }

    private CautionCard card(Caution caution) {
        return new CautionCard(caution, wording, () -> show.accept(caution));
    }

    private HBox nothing(String key) {
        Label first = new Label(wording.say(key));
        first.getStyleClass().add("caution-title");
        Label second = new Label(wording.say(key + ".scope"));
        second.getStyleClass().add("quiet");
        first.setWrapText(true);
        second.setWrapText(true);
        Node sign = key.equals(UNJUDGED) ? new Flag(Signal.WARNING, first.getText()) : Flag.lowered(first.getText());
        HBox card = new HBox(sign, new VBox(first, second));
        card.setId("no-caution");
        card.getStyleClass().addAll("card", "no-caution", "caution-head");
        return card;
    }
}
