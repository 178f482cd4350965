package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Set;
import javafx.beans.binding.Bindings;
import org.sagwise.interaction.Tool;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.kit.Command;

/** Collects terminals of the chosen parts for one plate, and joins them when it is asked again. */
final class PlateCommand {

    private final Workbench work;

    private PlateCommand(Workbench work) {
        this.work = work;
    }

    static Command of(Workbench work) {
        PlateCommand plate = new PlateCommand(work);
        return Command.of("plate", plate::run)
                .by("Shortcut+J")
                .unless(Bindings.createBooleanBinding(
                        () -> !plate.isGathering() && chosen(work).size() < 2,
                        work.movesProperty(),
                        work.bench().historyProperty()));
    }

    private boolean isGathering() {
        return work.hands().tool() instanceof Tool.Gathered;
    }

    private static List<Part> chosen(Workbench work) {
        Set<String> ids = work.hands().chosen().parts();
        return work.bench().scenario().parts().stream()
                .filter(part -> ids.contains(part.id()))
                .toList();
    }

    private void run() {
        if (isGathering()) {
            work.hands().plate();
            return;
        }
        List<TerminalRef> first = ends(0);
        List<TerminalRef> ends = isJoined(first) ? ends(1) : first;
        work.hands().gather(ends);
        work.ground().focusTerminal(ends.get(0));
    }

    /** The terminals of the chosen parts that are called alike: plus of every cell, for one. */
    private List<TerminalRef> ends(int which) {
        return chosen(work).stream().map(part -> part.terminals().get(which)).toList();
    }

    private boolean isJoined(List<TerminalRef> ends) {
        return ends.stream()
                .skip(1)
                .allMatch(end -> work.bench().scenario().links().stream()
                        .anyMatch(link -> Set.of(link.from(), link.to()).equals(Set.of(ends.get(0), end))));
    }
}
