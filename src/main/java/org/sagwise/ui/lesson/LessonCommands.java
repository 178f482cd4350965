package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.settings.AnswerOrder;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.text.Wording;

/** What a learner can do in a running lesson, by button, menu and key alike. */
public final class LessonCommands {

    /** What would tell by another way what a question asks for; not to be had until it is answered. */
    private static final Set<String> TELLING = Set.of(
            "post",
            "picture",
            "compare",
            "same-watts",
            "time-go",
            "time-step-on",
            "time-press-on",
            "time-run-down",
            "time-save");

    private LessonCommands() {}

    /**
     * @param dialogs asks before progress is forgotten
     */
    public static List<Command> of(
            LessonSession room, ProgressBook book, PreferencesModel preferences, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        return List.of(
                Command.of("lesson-next", room::next)
                        .by("Alt+Right")
                        .unless(not(room, now -> isRecalling(room) || now.mayGoOn() && !room.atSummary())),
                Command.of("lesson-back", room::back)
                        .by("Alt+Left")
                        .unless(not(room, now -> !isRecalling(room) && (now.at() > 0 || room.atSummary()))),
                Command.of("lesson-hint", room::hint)
                        .by("F3")
                        .unless(not(
                                room,
                                now -> !isRecalling(room)
                                        && isOpen(now)
                                        && now.hasMoreHints()
                                        && room.patience().mayHintProperty().get())),
                Command.of("lesson-show", () -> room.showSolution(wording.say("edit.lesson-show")))
                        .by("Shift+F3")
                        .unless(not(room, now -> !isRecalling(room) && isOpen(now))),
                Command.of("lesson-reset", () -> room.reset(wording.say("edit.lesson-reset")))
                        .by("Alt+Up")
                        .unless(not(room, now -> !isRecalling(room) && !room.atSummary())),
                Command.of("lesson-leave", room::leave).by("Shortcut+W").unless(not(room, now -> true)),
                Command.of("lesson-restart", room::restart).unless(not(room, now -> true)),
                Command.of("lesson-shuffle", () -> preferences.change(LessonCommands::turnOrder))
                        .ticked(preferences.property().map(now -> now.answers() == AnswerOrder.SHUFFLED)),
                Command.of("lesson-forget", () -> forget(book, dialogs))
                        .unless(Bindings.createBooleanBinding(
                                () -> book.property().get().places().isEmpty(), book.property())));
    }

    /** The same commands, without those that would answer an open question. */
    public static List<Command> veiled(List<Command> all, ObservableBooleanValue asked) {
        return all.stream()
                .map(it -> TELLING.contains(it.id()) ? it.norWhile(asked) : it)
                .toList();
    }

    private static Preferences turnOrder(Preferences now) {
        return now.withAnswers(now.answers() == AnswerOrder.SHUFFLED ? AnswerOrder.AS_WRITTEN : AnswerOrder.SHUFFLED);
    }

    private static void forget(ProgressBook book, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        Label words = new Label(wording.say("lesson.forget.words"));
        words.setWrapText(true);
        words.getStyleClass().add("dialog-words");
        ButtonType agree = dialogs.agree("lesson.forget.do");
        dialogs.ask(
                        "lesson-forget",
                        wording.say("lesson.forget.title"),
                        words,
                        List.of(agree, dialogs.leave("dialog.cancel")))
                .filter(agree::equals)
                .ifPresent(agreed -> book.wipe());
    }

    /** Whether the step asks for something that is not done yet. */
    private static boolean isOpen(LessonPlayer now) {
        Step step = now.step();
        boolean asks = step instanceof Step.Choose || step instanceof Step.Estimate;
        return (asks || step.isObservation()) && now.answers().isOpen();
    }

    /** Whether questions of earlier lessons come first: nothing of the lesson itself is done yet. */
    private static boolean isRecalling(LessonSession room) {
        return room.recallProperty().get().isPresent();
    }

    private static BooleanBinding not(LessonSession room, Predicate<LessonPlayer> condition) {
        return Bindings.createBooleanBinding(
                () -> room.player().filter(condition).isEmpty(),
                room.playerProperty(),
                room.atSummaryProperty(),
                room.recallProperty(),
                room.patience().mayHintProperty());
    }
}
