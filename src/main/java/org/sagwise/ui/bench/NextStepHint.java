package org.sagwise.ui.bench;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/**
 * On the felt, while a circuit is being built: what it needs next, and the way to it; or that it
 * could not be judged.
 */
public final class NextStepHint extends Button {

    private final BenchModel bench;
    private final Wording wording;

    /**
     * @param taught whether a lesson runs, which says itself what to do
     * @param lead leads to what the circuit needs
     */
    public NextStepHint(
            BenchModel bench,
            ObservableValue<Boolean> taught,
            Consumer<NextStep> lead,
            Wording wording,
            Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        setId("next-step");
        getStyleClass().add("next-step");
        setWrapText(true);
        setMaxWidth(USE_PREF_SIZE);
        setMinHeight(USE_PREF_SIZE);
        Tip.put(this, wording.say("next.tip"));
        setOnAction(event -> {
            if (bench.judgedProperty().get()) {
                lead.accept(bench.nextStepProperty().get());
            }
        });
        Runnable tell = () -> setText(words(taught.getValue()));
        visibleProperty().bind(textProperty().isNotEmpty());
        managedProperty().bind(visibleProperty());
        subscriptions.onChange(bench.assessmentProperty(), tell);
        subscriptions.onChange(bench.judgedProperty(), tell);
        subscriptions.onChange(taught, tell);
        tell.run();
    }

    private String words(boolean taught) {
        if (!bench.judgedProperty().get()) {
            return wording.say("next.unjudged");
        }
        NextStep step = bench.nextStepProperty().get();
        return taught || step == NextStep.NONE || !bench.assessment().cautions().isEmpty()
                ? ""
                : wording.say("next." + step.name().toLowerCase(Locale.ROOT));
    }
}
