package org.sagwise.ui.bench;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
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

/**
 * One line under the bench that says what is picked out and what could be measured there; what it
 * asks for it says shorter where there is little room.
 */
public final class StatusLine extends Label {

    private final Workbench work;
    private final BenchModel bench;
    private final Wording wording;
    private final PartTexts texts;
    private final StringProperty whole = new SimpleStringProperty("");
    private Said said = Said.only("");

    /**
     * Words for the line.
     *
     * @param whole all that is to be said
     * @param brief the same in few words
     */
    private record Said(String whole, String brief) {

        static Said only(String whole) {
            return new Said(whole, whole);
        }
    }

    public StatusLine(Workbench work, Wording wording, Subscriptions subscriptions) {
        this.work = work;
        this.bench = work.bench();
        this.wording = wording;
        this.texts = new PartTexts(wording);
        setId("status-line");
        getStyleClass().add("status-line");
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        Tip.put(this, whole);
        subscriptions.onChange(bench.assessmentProperty(), this::tell);
        subscriptions.onChange(work.movesProperty(), this::tell);
        subscriptions.onChange(work.messageProperty(), this::tell);
        subscriptions.watch(bench.spotlight().litProperty(), lit -> tell());
        subscriptions.onChange(widthProperty(), this::fit);
        subscriptions.onChange(fontProperty(), this::fit);
    }

    /** It takes the room that is left, whatever it says. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
        StuckLayout.wake(this);
    }

    private void tell() {
        String message = work.messageProperty().get();
        said = work.hands().isBusy() ? held(work.hands().tool()) : message.isEmpty() ? pointedAt() : Said.only(message);
        fit();
    }

    /** Says as much as there is room for. */
    private void fit() {
        whole.set(said.whole());
        // Readings, which come with every frame while time runs, have no shorter words and need no measuring.
        boolean isWhole = getWidth() <= 0 || said.brief().equals(said.whole()) || fits(said.whole());
        setText(isWhole ? said.whole() : said.brief());
    }

    private boolean fits(String words) {
        Text measured = new Text(words);
        measured.setFont(getFont());
        double room = getWidth() - snappedLeftInset() - snappedRightInset();
        return Math.ceil(measured.getLayoutBounds().getWidth()) <= room;
    }

    private Said pointedAt() {
        Selection lit = bench.spotlight().lit();
        Selection shown = lit.isNothing() ? work.hands().chosen() : lit;
        return shown.isNothing()
                ? asked("status.hint", "status.hint.brief")
                : Said.only(String.join("   ", texts.lit(bench.assessment(), shown)));
    }

    /** What to do with what is in the hand. */
    private Said held(Tool tool) {
        if (tool instanceof Tool.Fresh) {
            return asked("status.fresh", "status.fresh.brief");
        } else if (tool instanceof Tool.Lifted || tool instanceof Tool.Slip) {
            return asked("status.lifted", "status.lifted.brief");
        } else if (tool instanceof Tool.DraftLink lead) {
            return lead.over()
                    .map(end -> wording.say("status.draft.over", from(lead), texts.end(scenario(), end)))
                    .map(Said::only)
                    .orElseGet(() -> asked("status.draft", "status.draft.brief", from(lead)));
        } else if (tool instanceof Tool.Gathered gathered) {
            return asked(
                    "status.gathered",
                    "status.gathered.brief",
                    gathered.terminals().size());
        } else if (tool instanceof Tool.Tip tip) {
            return tip.probe() == Tool.Probe.RED
                    ? probe(tip, "status.probe.red.over", asked("status.probe.red", "status.probe.red.brief"))
                    : probe(tip, "status.probe.black.over", asked("status.probe.black", "status.probe.black.brief"));
        }
        return asked("status.frame", "status.frame.brief");
    }

    private Said probe(Tool.Tip tip, String over, Said free) {
        return tip.over()
                .map(end -> Said.only(wording.say(over, texts.end(scenario(), end))))
                .orElse(free);
    }

    private Said asked(String whole, String brief, Object... values) {
        return new Said(wording.say(whole, values), wording.say(brief, values));
    }

    private String from(Tool.DraftLink lead) {
        return texts.end(scenario(), lead.from());
    }

    private Scenario scenario() {
        return bench.scenario();
    }
}
