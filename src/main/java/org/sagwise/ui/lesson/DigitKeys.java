package org.sagwise.ui.lesson;

import javafx.event.EventHandler;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Sureness;
import org.sagwise.ui.kit.Subscriptions;

/** Makes the keys 1 to 4 choose an answer, wherever the focus is, except where one types. */
final class DigitKeys {

    private DigitKeys() {}

    static void choose(LessonColumn column, LessonSession room, Subscriptions subscriptions) {
        EventHandler<KeyEvent> filter = event -> pressed(event, room);
        subscriptions.add(() -> {
            if (column.getScene() != null) {
                column.getScene().removeEventFilter(KeyEvent.KEY_PRESSED, filter);
            }
        });
        column.sceneProperty().subscribe((before, now) -> move(before, now, filter));
    }

    private static void move(Scene before, Scene now, EventHandler<KeyEvent> filter) {
        if (before != null) {
            before.removeEventFilter(KeyEvent.KEY_PRESSED, filter);
        }
        if (now != null) {
            now.addEventFilter(KeyEvent.KEY_PRESSED, filter);
        }
    }

    private static void pressed(KeyEvent event, LessonSession room) {
        int place = digit(event.getCode()) - 1;
        boolean plain = !event.isShortcutDown() && !event.isAltDown() && !event.isControlDown();
        boolean types = event.getTarget() instanceof TextInputControl;
        if (plain && !types && place >= 0 && room.recallProperty().get().isPresent()) {
            room.choose(place);
            event.consume();
            return;
        }
        if (plain && !types && has(room, place)) {
            room.sure(Sureness.values()[place]);
            event.consume();
            return;
        }
        if (plain
                && !types
                && place >= 0
                && room.player().filter(it -> has(it, place)).isPresent()) {
            room.player().ifPresent(now -> room.choose(asWritten(now, place)));
            event.consume();
        }
    }

    /** Whether this is one of the answers to how sure somebody is. */
    private static boolean has(LessonSession room, int place) {
        return place >= 0
                && place < Sureness.values().length
                && room.player().filter(LessonPlayer::isAskingHowSure).isPresent();
    }

    private static boolean has(LessonPlayer now, int place) {
        return now.step() instanceof Step.Choose question
                && now.answers().isOpen()
                && place < question.choices().size();
    }

    private static int asWritten(LessonPlayer now, int shown) {
        return now.shuffle().order((Step.Choose) now.step()).get(shown);
    }

    private static int digit(KeyCode code) {
        return switch (code) {
            case DIGIT1, NUMPAD1 -> 1;
            case DIGIT2, NUMPAD2 -> 2;
            case DIGIT3, NUMPAD3 -> 3;
            case DIGIT4, NUMPAD4 -> 4;
            default -> 0;
        };
    }
}
