package org.sagwise.ui.shell;

import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.When;
import org.sagwise.ui.clock.ClockModel;
import org.sagwise.ui.kit.Subscriptions;

/**
 * Whether the row with the clock is there: once time is used, where a step of a lesson asks for it,
 * and when somebody calls for it. Until then its room is the bench's.
 */
final class ClockRow {

    private final ClockModel clock;
    private final Models.Lessons lessons;
    private final ReadOnlyBooleanWrapper shown = new ReadOnlyBooleanWrapper();
    private Optional<Boolean> asked = Optional.empty();

    ClockRow(ClockModel clock, Models.Lessons lessons, Subscriptions subscriptions) {
        this.clock = clock;
        this.lessons = lessons;
        subscriptions.onChange(clock.nowProperty(), this::decide);
        subscriptions.onChange(clock.runDown().progressProperty(), this::decide);
        subscriptions.watch(lessons.room().playerProperty(), now -> decide());
        // Whoever sets time going wants to see it, also after putting the row away.
        subscriptions.watch(clock.goingProperty(), going -> {
            asked = going ? Optional.empty() : asked;
            decide();
        });
    }

    ReadOnlyBooleanProperty shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Shows the row, or puts it away. */
    void toggle() {
        asked = Optional.of(!shown.get());
        decide();
    }

    private void decide() {
        shown.set(asked.orElseGet(() -> isUsed() || isTaught()));
    }

    private boolean isUsed() {
        return clock.goingProperty().get()
                || clock.nowProperty().get().endS() > 0
                || clock.runDown().progressProperty().get().isPresent();
    }

    /** Whether the step at hand is done by letting time run. */
    private boolean isTaught() {
        return lessons.room()
                .player()
                .map(LessonPlayer::step)
                .filter(Step.Measure.class::isInstance)
                .map(Step.Measure.class::cast)
                .filter(step -> step.reading().when() == When.RUN)
                .isPresent();
    }
}
