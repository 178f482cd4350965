package org.sagwise.ui.analysis;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Signal;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/**
 * A strip across the bench for a circuit that would hurt whoever built it. What to do against it
 * stands under its title, unless the readings beside the bench say the same; it folds away on demand.
 */
public final class DangerStrip extends VBox {

    /** Between the pieces of its row, and on its edges, in pixels. */
    private static final double ROOM_BETWEEN = 60;

    private final Wording wording;
    private final Label title = new Label();
    private final Label advice = new Label();
    private final Label more = new Label();
    private final Button showButton;
    private final CureModel cures;
    private final HBox cure = new HBox();
    private final ToggleButton unfold;
    private final HBox line;
    private final HBox buttons = new HBox();
    private boolean saidBeside;
    private String whole = "";
    private String brief = "";
    private double room = Double.MAX_VALUE;

    /**
     * @param show picks a caution out on the bench
     * @param cures what is known against it
     */
    public DangerStrip(
            BenchModel bench, Consumer<Caution> show, CureModel cures, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        this.cures = cures;
        setId("danger-strip");
        getStyleClass().add("danger-strip");
        String word = CautionTexts.signal(Signal.DANGER, wording.locale());
        Label signal = new Label(word);
        signal.getStyleClass().add("danger-word");
        signal.setMinWidth(USE_PREF_SIZE);
        title.setId("danger-title");
        title.getStyleClass().add("danger-title");
        title.setWrapText(true);
        advice.setWrapText(true);
        title.setMinWidth(0);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMinHeight(USE_PREF_SIZE);
        advice.setMinHeight(USE_PREF_SIZE);
        unfold = new ToggleButton(wording.say("danger.unfold"));
        unfold.setId("danger-unfold");
        unfold.setMinWidth(USE_PREF_SIZE);
        Tip.put(unfold, wording.say("danger.unfold.tip"));
        advice.visibleProperty().bind(unfold.selectedProperty());
        advice.managedProperty().bind(unfold.selectedProperty());
        unfold.setSelected(true);
        more.setMinWidth(USE_PREF_SIZE);
        showButton = new Button(wording.say("caution.show"));
        Tip.put(showButton, wording.say("caution.show.tip"));
        showButton.setMinWidth(USE_PREF_SIZE);
        setAccessibleRole(AccessibleRole.TEXT);
        cure.setMinWidth(USE_PREF_SIZE);
        cure.setAlignment(Pos.CENTER);
        line = new HBox(new Flag(Signal.DANGER, word), signal, title);
        line.getStyleClass().add("danger-line");
        line.setAlignment(Pos.CENTER_LEFT);
        buttons.getStyleClass().add("danger-line");
        buttons.setAlignment(Pos.CENTER_RIGHT);
        buttons.setMinWidth(0);
        buttons.getChildren().setAll(more, cure, showButton, unfold);
        getChildren().addAll(line, buttons, advice);
        subscriptions.watch(bench.assessmentProperty(), now -> show(dangers(now), show));
        subscriptions.watch(cures.property(), now -> offer(dangers(bench.assessment()), now));
    }

    /** Takes one row where that is wide enough for its title, otherwise two with fewer buttons. */
    public void fitInto(double width) {
        room = width;
        fit();
    }

    private void fit() {
        if (!isVisible()) {
            return;
        }
        applyCss();
        line.getChildren().remove(buttons);
        getChildren().remove(buttons);
        title.setText(whole);
        // What was left out the time before counts again, or there seems to be room for it.
        showButton.setManaged(true);
        boolean roomy = line.prefWidth(-1) + buttons.prefWidth(-1) + ROOM_BETWEEN <= Math.min(room, maxWidth(-1));
        if (roomy) {
            line.getChildren().add(buttons);
        } else {
            getChildren().add(1, buttons);
        }
        title.setText(roomy || !saidBeside ? whole : brief);
        showButton.setVisible(roomy);
        showButton.setManaged(roomy);
    }

    /** Whether the readings, which say all of it, stand beside the bench. */
    public void setSaidBeside(boolean said) {
        if (said != saidBeside) {
            saidBeside = said;
            unfold.setSelected(!said);
            fit();
        }
    }

    private void show(List<Caution> dangers, Consumer<Caution> show) {
        setVisible(!dangers.isEmpty());
        setManaged(!dangers.isEmpty());
        if (dangers.isEmpty()) {
            return;
        }
        Caution first = dangers.get(0);
        whole = wording.say(
                "danger.as-built", CautionTexts.title(first, wording.locale()), CautionCard.numbers(first, wording));
        brief = wording.say("danger.brief", CautionTexts.title(first, wording.locale()));
        title.setText(whole);
        advice.setText(wording.say("caution.do", CautionTexts.advice(first, wording.locale())));
        more.setText(dangers.size() > 1 ? wording.say("danger.more", dangers.size() - 1) : "");
        showButton.setOnAction(event -> show.accept(first));
        setAccessibleText(CautionTexts.signal(Signal.DANGER, wording.locale()) + ". " + whole + " " + advice.getText());
        fit();
    }

    private void offer(List<Caution> dangers, Cures found) {
        List<Offer> offers = dangers.isEmpty() ? List.of() : found.of(dangers.get(0));
        cure.getChildren()
                .setAll(offers.stream().limit(1).map(o -> button(o, found)).toList());
        cure.setManaged(!offers.isEmpty());
        fit();
    }

    private Button button(Offer offer, Cures found) {
        List<CureChange> changes = found.before()
                .map(before -> CureChange.of(before, offer, wording))
                .orElse(List.of());
        Button button = CureBox.button(offer, changes, wording, () -> cures.make(offer, wording.locale()));
        button.setId("strip-cure");
        return button;
    }

    private static List<Caution> dangers(Assessment assessment) {
        return assessment.cautions().stream()
                .filter(caution -> caution.signal() == Signal.DANGER)
                .toList();
    }
}
