package org.sagwise.ui.analysis;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.ToggleButton;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Signal;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/**
 * Opens and closes the column with the readings, and says while it is closed how grave the gravest
 * caution in it is, and how many there are.
 */
public final class ReadingsButton extends ToggleButton {

    private final BenchModel bench;
    private final Wording wording;
    private boolean open;
    private String said = "";

    /**
     * @param toggle shows the readings or takes them away
     */
    public ReadingsButton(
            BenchModel bench, Command toggle, Controls controls, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        setId("readings-toggle");
        getStyleClass().add("readings-toggle");
        setMinWidth(USE_PREF_SIZE);
        controls.wire(this, toggle);
        setOnAction(event -> {
            setSelected(open);
            toggle.action().run();
        });
        subscriptions.watch(bench.assessmentProperty(), now -> tell());
        subscriptions.onChange(bench.judgedProperty(), this::tell);
        subscriptions.watch(bench.button().lockedProperty(), now -> tell());
    }

    /** The column is open, or closed. */
    public void setOpen(boolean now) {
        open = now;
        setSelected(now);
        tell();
    }

    /** Nothing is given away that a class is asked to predict, and nothing said that was not judged. */
    private void tell() {
        boolean judged = bench.judgedProperty().get();
        boolean veiled = !judged || bench.button().lockedProperty().get();
        boolean finished = bench.nextStepProperty().get() == NextStep.NONE;
        List<Caution> cautions = veiled ? List.of() : bench.assessment().cautions();
        if (!cautions.isEmpty()) {
            Signal gravest = cautions.stream()
                    .map(Caution::signal)
                    .min(Signal::compareTo)
                    .orElseThrow();
            String word = CautionTexts.signal(gravest, wording.locale());
            show(() -> new Flag(gravest, word), wording.say("readings.flagged", cautions.size(), word));
        } else if (veiled || !finished) {
            show(
                    () -> null,
                    wording.say(!judged ? "cautions.unjudged" : veiled ? "readings.veiled" : "cautions.unfinished"));
        } else {
            String none = wording.say("cautions.none");
            show(() -> Flag.lowered(none), none);
        }
        setText(
                open || cautions.isEmpty()
                        ? wording.say("readings.button")
                        : wording.say("readings.button.flagged", cautions.size()));
    }

    /** The button is told the same many times a second while time goes. */
    private void show(Supplier<Flag> flag, String words) {
        if (!words.equals(said)) {
            said = words;
            setGraphic(flag.get());
            setAccessibleText(wording.say("readings.spoken", words));
        }
    }
}
