package org.sagwise.ui.bench;

import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** On the felt, while a circuit is being built: what it needs next; or that it could not be judged. */
public final class NextStepHint extends Label {

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");

    private final BenchModel bench;
    private final Wording wording;

    /**
     * @param taught whether a lesson runs, which says itself what to do
     */
    public NextStepHint(
            BenchModel bench, ObservableValue<Boolean> taught, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        setId("next-step");
        getStyleClass().add("next-step");
        setWrapText(true);
        setMaxWidth(USE_PREF_SIZE);
        setMouseTransparent(true);
        Runnable tell = () -> setText(words(taught.getValue()));
        visibleProperty().bind(textProperty().isNotEmpty());
        subscriptions.onChange(bench.assessmentProperty(), tell);
        subscriptions.onChange(bench.judgedProperty(), tell);
        subscriptions.onChange(taught, tell);
        tell.run();
    }

    /** Stands at the foot of the bench, or at its top. */
    void standLow(boolean low) {
        pseudoClassStateChanged(LOW, low);
    }

    /** Between the edge of the bench and the hint, in pixels. */
    double gap() {
        return Math.abs(getTranslateY());
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
