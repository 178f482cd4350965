package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import org.sagwise.interaction.Tool;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Point;
import org.sagwise.plan.CheckStep;
import org.sagwise.reading.MeterDisplay;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.MeterInLine;
import org.sagwise.scenario.edit.SetProbes;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.text.Wording;

/** What can be done with the meter in the hand. */
public final class MeterCommands {

    private MeterCommands() {}

    static List<Command> of(Workbench work) {
        BooleanBinding noStep = Bindings.createBooleanBinding(
                () -> step(work).isEmpty(), work.bench().assessmentProperty());
        BooleanBinding laidAside = Bindings.createBooleanBinding(
                () -> work.bench().scenario().probes().isEmpty(), work.bench().historyProperty());
        BooleanBinding atNoJoint = Bindings.createBooleanBinding(
                () -> joint(work).isEmpty(), work.bench().assessmentProperty());
        return List.of(
                Command.of("probe-red", () -> take(work, Tool.Probe.RED)),
                Command.of("probe-black", () -> take(work, Tool.Probe.BLACK)),
                turn(work, MeterMode.VOLTS).unless(laidAside),
                turn(work, MeterMode.AMPS).unless(laidAside),
                turn(work, MeterMode.OHMS).unless(laidAside),
                Command.of("meter-in-line", () -> putInLine(work)).unless(atNoJoint),
                Command.of("write-down", () -> writeDown(work)).unless(noStep),
                Command.of("meter-away", () -> work.hands().putAway()).unless(laidAside));
    }

    /** The id of what turns the meter to a mode. */
    public static String turning(MeterMode mode) {
        return "meter-" + word(mode);
    }

    private static Command turn(Workbench work, MeterMode mode) {
        return Command.of(
                        turning(mode),
                        () -> work.bench()
                                .scenario()
                                .probes()
                                .map(probes -> probes.turnedTo(mode))
                                .ifPresent(probes -> work.perform(new SetProbes(Optional.of(probes)))))
                .chosen(work.bench()
                        .assessmentProperty()
                        .map(now -> now.scenario()
                                .probes()
                                .filter(probes -> probes.mode() == mode)
                                .isPresent()));
    }

    /** Takes a probe from where it rests, with the focus on that terminal, for the keys. */
    private static void take(Workbench work, Tool.Probe probe) {
        Point middle = work.ground().middle();
        work.ground().takeFocus();
        work.hands().takeProbe(probe, middle.x(), middle.y());
        start(work, probe).ifPresent(work.ground()::focusTerminal);
    }

    private static Optional<TerminalRef> start(Workbench work, Tool.Probe probe) {
        Optional<Probes> resting = work.bench().scenario().probes();
        return resting.map(probe == Tool.Probe.RED ? Probes::red : Probes::black)
                .or(() -> work.bench().scenario().parts().stream()
                        .flatMap(part -> first(part).stream())
                        .findFirst());
    }

    private static Optional<TerminalRef> first(Part part) {
        return part.terminals().stream().findFirst();
    }

    /** The joint that the meter counts at, as if it were opened. */
    private static OptionalInt joint(Workbench work) {
        Optional<MeterDisplay> display =
                work.bench().assessment().readings().probes().map(ProbeReading::display);
        return display.isPresent() && display.get() instanceof MeterDisplay.Amps amps
                ? amps.joint()
                : OptionalInt.empty();
    }

    private static void putInLine(Workbench work) {
        joint(work).ifPresent(link -> work.perform(new MeterInLine(link)));
    }

    private static Optional<CheckStep> step(Workbench work) {
        return CheckStep.of(work.bench().assessment().readings(), work.bench().scenario());
    }

    private static void writeDown(Workbench work) {
        Wording wording = work.wording();
        Optional<ProbeReading> shown = work.bench().assessment().readings().probes();
        step(work)
                .ifPresentOrElse(
                        step -> {
                            String figure = MeterTexts.in(wording.locale())
                                    .figure(shown.orElseThrow().display());
                            work.written().put(step, figure);
                            work.say(wording.say(
                                    "written.down",
                                    wording.say("written." + word(step)),
                                    figure,
                                    work.written().figures().size()));
                        },
                        () -> work.say(wording.say("written.none")));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
