package org.sagwise.ui.clock;

import javafx.scene.control.Slider;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Now;
import org.sagwise.ui.kit.StuckLayout;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;

/** Everything that was recorded, from its start to its end, to be turned back along. */
final class TimeSlider extends Slider {

    private final ClockModel clock;
    private final ClockTexts texts;
    private boolean following;

    TimeSlider(ClockModel clock, ClockTexts texts, Subscriptions subscriptions) {
        this.clock = clock;
        this.texts = texts;
        setId("time-slider");
        getStyleClass().add("time-slider");
        Tip.put(this, texts.word("slider.tip"));
        setAccessibleText(texts.word("slider.spoken"));
        setBlockIncrement(ClockSteps.STEP_S);
        setMaxWidth(Double.MAX_VALUE);
        valueProperty().subscribe(this::moved);
        subscriptions.watch(clock.nowProperty(), this::follow);
    }

    private void follow(Now now) {
        following = true;
        setDisable(now.endS() <= 0);
        setMax(Math.max(now.endS(), Double.MIN_NORMAL));
        // While it is dragged it stands where the hand is; the moment comes after.
        if (!isValueChanging()) {
            setValue(now.timeS());
        }
        following = false;
    }

    private void moved() {
        if (!following) {
            clock.turnTo(getValue());
        }
        setAccessibleHelp(texts.time(getValue()));
    }

    /** A longer course moves the thumb and nothing around the slider. */
    @Override
    public void requestLayout() {
        if (getSkin() == null || getWidth() == 0) {
            super.requestLayout();
        } else {
            setNeedsLayout(true);
            StuckLayout.wake(this);
        }
    }
}
