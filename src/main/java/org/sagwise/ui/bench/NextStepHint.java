package org.sagwise.ui.bench;

import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import org.sagwise.assessment.Assessment;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** On the felt, while a circuit is being built: what it needs next. */
public final class NextStepHint extends Label {

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");

    private final Wording wording;

    /**
     * @param taught whether a lesson runs, which says itself what to do
     */
    public NextStepHint(
            BenchModel bench, ObservableValue<Boolean> taught, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        setId("next-step");
        getStyleClass().add("next-step");
        setWrapText(true);
        setMaxWidth(USE_PREF_SIZE);
        setMouseTransparent(true);
        Runnable tell = () -> tell(bench.assessment(), taught.getValue());
        subscriptions.onChange(bench.assessmentProperty(), tell);
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

    private void tell(Assessment now, boolean taught) {
        NextStep step = taught || !now.cautions().isEmpty() ? NextStep.NONE : NextStep.of(now.bench());
        setVisible(step != NextStep.NONE);
        setText(step == NextStep.NONE ? "" : wording.say("next." + step.name().toLowerCase(Locale.ROOT)));
    }
}
