package org.sagwise.ui.bench;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.part.PartKind;
import org.sagwise.plan.NextStep;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.StuckLayout;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The fire button to hold, what it does at the moment, and the latch that keeps it held. */
public final class FireView extends HBox {

    private static final PseudoClass FIRING = PseudoClass.getPseudoClass("firing");

    private final BenchModel bench;
    private final Wording wording;
    private final FireButton button;
    private final Label state = new Label();
    private final Label hint = new Label();
    private final VBox words = new VBox(state, hint) {

        {
            state.fontProperty().subscribe((before, now) -> super.requestLayout());
        }

        /** As wide as its style says and two lines high, whatever it says; only letters can grow. */
        @Override
        public void requestLayout() {
            setNeedsLayout(true);
            StuckLayout.wake(this);
        }
    };
    private final ToggleButton latchButton;

    public FireView(BenchModel bench, Command latch, Controls controls, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        this.button = new FireButton(bench.button(), wording.say("fire.button"));
        state.setMinWidth(USE_PREF_SIZE);
        button.explain(wording.say("fire.tip"));
        latchButton = latchButton(latch, controls);
        getStyleClass().add("fire-view");
        setAlignment(Pos.CENTER_LEFT);
        state.setId("fire-state");
        state.getStyleClass().add("fire-state");
        hint.getStyleClass().add("quiet");
        words.setAlignment(Pos.CENTER_LEFT);
        // The widest words decide the width, so that nothing beside them moves on a press.
        words.getStyleClass().add("fire-words");
        getChildren().addAll(button, words, latchButton);
        FireButtonState thumb = bench.button();
        subscriptions.watch(thumb.latchedProperty(), latchButton::setSelected);
        subscriptions.onChange(thumb.latchedProperty(), this::update);
        subscriptions.onChange(thumb.lockedProperty(), this::update);
        subscriptions.watch(bench.assessmentProperty(), now -> update());
    }

    /** What it says beside the button; its spoken text says the same. */
    public Node words() {
        return words;
    }

    /** What keeps the button held; a menu and keys do the same. */
    public Node latch() {
        return latchButton;
    }

    private ToggleButton latchButton(Command latch, Controls controls) {
        ToggleButton toggle = new ToggleButton(wording.say(latch.textKey()));
        toggle.setId("latch");
        toggle.getStyleClass().add("latch");
        toggle.setMinWidth(USE_PREF_SIZE);
        controls.wire(toggle, latch);
        return toggle;
    }

    private void update() {
        boolean switched = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        boolean down = bench.button().isDown();
        boolean locked = bench.button().lockedProperty().get();
        button.setDisable(!switched || locked);
        button.pseudoClassStateChanged(FIRING, down && switched);
        pseudoClassStateChanged(FIRING, down && switched);
        if (!switched) {
            boolean begun = bench.nextStepProperty().get() != NextStep.NONE;
            say("fire.none", begun ? "fire.none.yet" : "fire.none.hint");
        } else if (locked) {
            say("fire.locked", "fire.locked.hint");
        } else if (bench.button().latchedProperty().get()) {
            say("fire.firing", "fire.latched.hint");
        } else if (!down && bench.assessment().readings().fired()) {
            say("fire.shown", "fire.shown.hint");
        } else {
            say(down ? "fire.firing" : "fire.open", "fire.hint");
        }
    }

    private void say(String stateKey, String hintKey) {
        state.setText(wording.say(stateKey));
        hint.setText(wording.say(hintKey));
        button.setAccessibleText(wording.say("fire.accessible", state.getText()));
    }
}
