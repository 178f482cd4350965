package org.sagwise.ui.share;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.StackPane;
import org.sagwise.assessment.Moment;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.kit.ChoiceDialog;
import org.sagwise.ui.text.Wording;

/**
 * Whether an export shows the start of firing or what the clock shows. Nothing is asked while the
 * clock stands at the start.
 */
final class Moments extends StackPane {

    private enum When {
        START,
        CLOCK
    }

    private final Moment start;
    private final Moment clock;
    private final ChoiceDialog<When> choice;

    /**
     * @param id beginning of the ids of its buttons
     * @param clock the moment that the clock shows
     */
    Moments(String id, Moment clock, Wording wording) {
        this.start = Moment.start(clock.assessment());
        this.clock = clock;
        choice = new ChoiceDialog<>(
                id + "-moment",
                wording.say("share.moment"),
                clock.isStart() ? List.of(When.START) : List.of(When.values()),
                each -> each == When.START ? "start" : "clock",
                each -> each == When.START
                        ? wording.say("share.moment.start")
                        : wording.say("share.moment.clock", wording.quantity(clock.atS(), Unit.SECOND)));
        getChildren().add(choice);
        setVisible(!clock.isStart());
        setManaged(!clock.isStart());
    }

    Moment get() {
        return choice.get() == When.START ? start : clock;
    }

    ObservableValue<?> chosenProperty() {
        return choice.chosenProperty();
    }
}
