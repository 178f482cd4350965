package org.sagwise.ui.lesson.instructor;

import java.util.List;
import javafx.beans.binding.Bindings;
import org.sagwise.ui.clock.ClockModel;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.VoteModel;

/** What an instructor can do with the class's window beyond the lesson itself. */
public final class InstructorCommands {

    private InstructorCommands() {}

    public static List<Command> of(LessonSession room, VoteModel desk, ClockModel clock, FireButtonState thumb) {
        return List.of(
                Command.of("instructor-freeze", () -> freeze(clock, thumb)).by("Shortcut+Shift+F"),
                Command.of("instructor-unlock", thumb::unlock).unless(Bindings.not(thumb.lockedProperty())),
                Command.of("instructor-reset", () -> {
                    desk.clear();
                    room.restart();
                }));
    }

    /**
     * Time stands still and the button stays as it is, so that readings stay to be talked about.
     */
    private static void freeze(ClockModel clock, FireButtonState thumb) {
        clock.pause();
        if (thumb.latchedProperty().get()) {
            thumb.start(false);
        } else if (thumb.isDown()) {
            thumb.start(true);
        }
    }
}
