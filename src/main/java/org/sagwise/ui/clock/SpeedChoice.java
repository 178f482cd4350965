package org.sagwise.ui.clock;

import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Speed;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;

/** How fast time passes: one button for each speed, one of them pressed. */
final class SpeedChoice extends HBox {

    private final ClockModel clock;
    private final ClockTexts texts;

    SpeedChoice(ClockModel clock, ClockTexts texts, Subscriptions subscriptions) {
        this.clock = clock;
        this.texts = texts;
        getStyleClass().add("speed-choice");
        ToggleGroup group = new ToggleGroup();
        for (Speed speed : Speed.values()) {
            ToggleButton button = button(speed);
            button.setToggleGroup(group);
            getChildren().add(button);
            subscriptions.watch(clock.speedProperty(), chosen -> button.setSelected(chosen == speed));
        }
    }

    private ToggleButton button(Speed speed) {
        ToggleButton button = new ToggleButton(texts.word("speed", speed.factor()));
        button.setId("speed-" + speed.factor());
        button.setMinWidth(USE_PREF_SIZE);
        Tip.put(button, texts.word("speed.tip", speed.factor()));
        button.setAccessibleText(texts.word("speed.spoken", speed.factor()));
        button.setOnAction(event -> {
            clock.setSpeed(speed);
            // Pressing the pressed one again would let go of it; one is always pressed.
            button.setSelected(true);
        });
        return button;
    }
}
