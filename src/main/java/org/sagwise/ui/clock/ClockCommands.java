package org.sagwise.ui.clock;

import java.util.List;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import org.sagwise.run.playback.Speed;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Shown;

/** Everything that the clock can be told to do. */
public final class ClockCommands {

    private ClockCommands() {}

    /**
     * @param save writes what was recorded to a file
     */
    public static List<Command> of(ClockModel clock, PreferencesModel preferences, Runnable save) {
        BooleanBinding over = Bindings.createBooleanBinding(
                () -> clock.nowProperty().get().isOver()
                        || clock.runDown().progressProperty().get().isPresent(),
                clock.nowProperty(),
                clock.runDown().progressProperty());
        BooleanBinding overAtTheEnd = Bindings.createBooleanBinding(
                () -> over.get() && !clock.nowProperty().get().isTurnedBack(), over, clock.nowProperty());
        BooleanBinding atStart =
                Bindings.createBooleanBinding(() -> clock.nowProperty().get().timeS() <= 0, clock.nowProperty());
        BooleanBinding atEnd =
                Bindings.createBooleanBinding(() -> !clock.nowProperty().get().isTurnedBack(), clock.nowProperty());
        BooleanBinding nothing =
                Bindings.createBooleanBinding(() -> clock.nowProperty().get().endS() <= 0, clock.nowProperty());
        BooleanBinding running = Bindings.createBooleanBinding(
                () -> clock.runDown().progressProperty().get().isPresent(),
                clock.runDown().progressProperty());
        ClockSteps steps = clock.steps();
        return List.of(
                Command.of("time-go", clock::toggle).by("F8").unless(over).ticked(clock.goingProperty()),
                Command.of("time-start", steps::toStart).by("Shift+F8").unless(atStart),
                Command.of("time-step-back", steps::back).by("F6").unless(atStart),
                Command.of("time-step-on", steps::on).by("F7").unless(overAtTheEnd),
                Command.of("time-press-back", steps::pressBack).by("Shift+F6").unless(atStart),
                Command.of("time-press-on", steps::pressOn).by("Shift+F7").unless(atEnd),
                Command.of("time-slower", () -> change(clock, Speed::slower)).by("Shortcut+Comma"),
                Command.of("time-faster", () -> change(clock, Speed::faster)).by("Shortcut+Period"),
                Command.of("time-run-down", () -> runDown(clock, preferences))
                        .by("Shift+F4")
                        .unless(running),
                Command.of("time-forget", clock::reset).unless(nothing),
                Command.of("time-curves", () -> preferences.change(ClockCommands::turnCurves))
                        .by("F4")
                        .ticked(preferences.property().map(now -> now.curves() == Shown.SHOWN)),
                Command.of("time-save", save).unless(nothing));
    }

    private static void change(ClockModel clock, UnaryOperator<Speed> to) {
        clock.setSpeed(to.apply(clock.speedProperty().get()));
    }

    /** A run-down is looked at in its curves. */
    private static void runDown(ClockModel clock, PreferencesModel preferences) {
        preferences.change(now -> now.withCurves(Shown.SHOWN));
        clock.startRunDown();
    }

    private static Preferences turnCurves(Preferences now) {
        return now.withCurves(now.curves() == Shown.SHOWN ? Shown.HIDDEN : Shown.SHOWN);
    }
}
