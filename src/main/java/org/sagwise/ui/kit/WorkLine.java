package org.sagwise.ui.kit;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.sagwise.errand.Errand;
import org.sagwise.ui.kit.LatestTask.State;
import org.sagwise.ui.text.Wording;

/**
 * The way out of something that takes long: a button that stops it, once one would begin to wonder; and the word why
 * there is no answer, with a button that asks again.
 */
public final class WorkLine extends HBox {

    /** What is answered sooner needs no button, which would only flicker. */
    private static final double WONDER_S = 0.5;

    private static final Map<State, String> WHY =
            Map.of(State.STOPPED, "work.stopped", State.TOO_LONG, "work.too-long", State.TOO_LARGE, "work.too-large");

    private final LatestTask task;
    private final Label told;
    private final Wording wording;
    private final Button stop;
    private final Button again;
    private boolean keepsRoom;
    private final PauseTransition late = new PauseTransition(javafx.util.Duration.seconds(WONDER_S));

    /**
     * @param name with which the ids of its buttons begin
     * @param told where what is being done is told; takes the word why there is no answer
     */
    public WorkLine(String name, LatestTask task, Label told, Wording wording) {
        this.task = task;
        this.told = told;
        this.wording = wording;
        stop = button(name + "-stop", "work.stop", task::stop);
        again = button(name + "-again", "work.again", () -> {
            told.setText(wording.say("work.busy"));
            task.again();
        });
        setMinWidth(USE_PREF_SIZE);
        late.setOnFinished(event -> show(task.stateProperty().get() == State.WORKING, stop));
        task.stateProperty().subscribe(this::follow);
    }

    /** For where something lies below it, which would be pushed down just when somebody is about to click it. */
    public WorkLine keepingRoom() {
        keepsRoom = true;
        show(stop.isVisible(), stop);
        return this;
    }

    private Button button(String id, String key, Runnable action) {
        Button button = new Button(wording.say(key));
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        getChildren().add(button);
        return button;
    }

    private void follow(State now) {
        late.stop();
        Optional<String> why = why(now, wording);
        show(why.isPresent(), again);
        if (now == State.WORKING) {
            late.playFromStart();
        } else {
            if (why.isPresent() && stop.isFocused()) {
                again.requestFocus();
            }
            show(false, stop);
        }
        why.ifPresent(told::setText);
    }

    /** Why there is no answer; empty while one may still come, or has come. */
    public static Optional<String> why(State state, Wording wording) {
        return Optional.ofNullable(WHY.get(state))
                .map(key -> wording.say(key, Duration.ofNanos(Errand.USUAL_NS).toMinutes()));
    }

    private void show(boolean there, Button button) {
        button.setVisible(there);
        again.setManaged(again.isVisible());
        stop.setManaged(stop.isVisible() || keepsRoom && !again.isVisible());
        boolean any = stop.isVisible() || again.isVisible();
        setVisible(any);
        setManaged(any || keepsRoom);
    }
}
