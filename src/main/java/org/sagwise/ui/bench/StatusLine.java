package org.sagwise.ui.bench;

import javafx.scene.control.Label;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Tool;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.StuckLayout;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** One line under the bench that says what is picked out and what could be measured there. */
public final class StatusLine extends Label {

    private final Workbench work;
    private final BenchModel bench;
    private final Wording wording;
    private final PartTexts texts;

    public StatusLine(Workbench work, Wording wording, Subscriptions subscriptions) {
        this.work = work;
        this.bench = work.bench();
        this.wording = wording;
        this.texts = new PartTexts(wording);
        setId("status-line");
        getStyleClass().add("status-line");
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        Tip.put(this, textProperty());
        subscriptions.onChange(bench.assessmentProperty(), this::tell);
        subscriptions.onChange(work.movesProperty(), this::tell);
        subscriptions.onChange(work.messageProperty(), this::tell);
        subscriptions.watch(bench.spotlight().litProperty(), lit -> tell());
    }

    /** It takes the room that is left, whatever it says. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
        StuckLayout.wake(this);
    }

    private void tell() {
        String message = work.messageProperty().get();
        setText(work.hands().isBusy() ? held(work.hands().tool()) : message.isEmpty() ? pointedAt() : message);
    }

    private String pointedAt() {
        Selection lit = bench.spotlight().lit();
        Selection shown = lit.isNothing() ? work.hands().chosen() : lit;
        return shown.isNothing()
                ? wording.say("status.hint")
                : String.join("   ", texts.lit(bench.assessment(), shown));
    }

    /** What to do with what is in the hand. */
    private String held(Tool tool) {
        if (tool instanceof Tool.Fresh) {
            return wording.say("status.fresh");
        } else if (tool instanceof Tool.Lifted || tool instanceof Tool.Slip) {
            return wording.say("status.lifted");
        } else if (tool instanceof Tool.DraftLink lead) {
            return lead.over()
                    .map(end -> wording.say("status.draft.over", from(lead), texts.end(scenario(), end)))
                    .orElseGet(() -> wording.say("status.draft", from(lead)));
        } else if (tool instanceof Tool.Gathered gathered) {
            return wording.say("status.gathered", gathered.terminals().size());
        } else if (tool instanceof Tool.Tip tip) {
            String probe = tip.probe() == Tool.Probe.RED ? "status.probe.red" : "status.probe.black";
            return tip.over()
                    .map(end -> wording.say(probe + ".over", texts.end(scenario(), end)))
                    .orElseGet(() -> wording.say(probe));
        }
        return wording.say("status.frame");
    }

    private String from(Tool.DraftLink lead) {
        return texts.end(scenario(), lead.from());
    }

    private Scenario scenario() {
        return bench.scenario();
    }
}
