package org.sagwise.ui.lesson;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;

import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.ui.command.Command;
import org.sagwise.ui.text.Wording;

import java.util.List;
import java.util.function.Predicate;

/** What a learner can do in a running lesson, by button, menu and key alike. */
public record LessonCommands(
        Command next, Command back, Command hint, Command show, Command reset, Command leave) {

    public static LessonCommands of(LessonRoom room, Wording wording) {
        return new LessonCommands(
                Command.of("lesson-next", room::next)
                        .by("Alt+Right")
                        .unless(not(room, now -> now.mayGoOn() && !room.atSummary())),
                Command.of("lesson-back", room::back)
                        .by("Alt+Left")
                        .unless(not(room, now -> now.at() > 0 || room.atSummary())),
                Command.of("lesson-hint", room::hint)
                        .by("F3")
                        .unless(not(room, now -> LessonCommands.isOpen(now) && now.hasMoreHints())),
                Command.of("lesson-show", () -> room.showSolution(wording.say("edit.lesson-show")))
                        .by("Shift+F3")
                        .unless(not(room, LessonCommands::isOpen)),
                Command.of("lesson-reset", () -> room.reset(wording.say("edit.lesson-reset")))
                        .by("Alt+Up")
                        .unless(not(room, now -> !room.atSummary())),
                Command.of("lesson-leave", room::leave)
                        .by("Shortcut+W")
                        .unless(not(room, now -> true)));
    }

    public List<Command> all() {
        return List.of(next, back, hint, show, reset, leave);
    }

    /** Whether the step asks for something that is not done yet. */
    private static boolean isOpen(LessonPlayer now) {
        Step step = now.step();
        boolean asks = step instanceof Step.Choose || step instanceof Step.Estimate;
        return (asks || step.isObservation()) && now.answers().isOpen();
    }

    private static BooleanBinding not(LessonRoom room, Predicate<LessonPlayer> condition) {
        return Bindings.createBooleanBinding(
                () -> room.player().filter(condition).isEmpty(),
                room.playerProperty(),
                room.atSummaryProperty());
    }
}
