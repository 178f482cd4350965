package org.sagwise.ui.lesson;

import java.util.Optional;
import java.util.function.LongSupplier;
import org.sagwise.lesson.LessonPlayer;

/** How long the lesson that runs has been going on, against the minutes it is meant to take. */
public final class LessonPace {

    private static final double MINUTE_NS = 60e9;

    private final LessonSession room;
    private final LongSupplier nanoTime;
    private Optional<String> lesson = Optional.empty();
    private long begun;

    /**
     * @param nanoTime real time, ns
     */
    public LessonPace(LessonSession room, LongSupplier nanoTime) {
        this.room = room;
        this.nanoTime = nanoTime;
        room.playerProperty().subscribe(this::follow);
    }

    private void follow(Optional<LessonPlayer> player) {
        Optional<String> now = player.map(it -> it.lesson().id());
        if (!now.equals(lesson)) {
            lesson = now;
            begun = nanoTime.getAsLong();
        }
    }

    /** Begins to count anew. */
    public void restart() {
        begun = nanoTime.getAsLong();
    }

    /** Minutes since the lesson began. */
    public double minutes() {
        return (nanoTime.getAsLong() - begun) / MINUTE_NS;
    }

    /** Share of the lesson's minutes that has passed; more than 1 when it takes longer. */
    public double share() {
        return room.player().map(it -> minutes() / it.lesson().minutes()).orElse(0.0);
    }

    /** Where one would be by now if all steps took equally long, from 1. */
    public int stepByNow() {
        int steps = room.player().map(it -> it.lesson().steps().size()).orElse(1);
        return Math.max(1, Math.min(steps, 1 + (int) (share() * steps)));
    }
}
