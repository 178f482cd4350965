package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.CopyPlace;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Tool;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.AlignParts;
import org.sagwise.scenario.edit.ArrangeCells;
import org.sagwise.scenario.edit.CutLinks;
import org.sagwise.scenario.edit.DeleteNotes;
import org.sagwise.scenario.edit.DeleteParts;
import org.sagwise.scenario.edit.DuplicateParts;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.TurnParts;
import org.sagwise.ui.kit.Command;

/** What can be done with what is chosen on the bench. */
public final class EditCommands {

    private EditCommands() {}

    /**
     * @param editor shows the card of what is chosen
     * @param askRows asks in how many rows cells shall be joined
     */
    public static List<Command> of(Workbench work, Runnable editor, Runnable askRows) {
        BenchInteraction hands = work.hands();
        BooleanBinding noPart = unless(work, chosen -> !chosen.parts().isEmpty());
        BooleanBinding nothing = unless(work, chosen -> !chosen.isNothing());
        BooleanBinding notOne =
                unless(work, chosen -> chosen.isOne() && chosen.notes().isEmpty());
        BooleanBinding nothingToNote = unless(work, Selection::isOne);
        BooleanBinding nothingToMove = unless(
                work, chosen -> !chosen.parts().isEmpty() || !chosen.notes().isEmpty());
        BooleanBinding fewParts = unless(work, chosen -> chosen.parts().size() > 1);
        return with(
                MeterCommands.of(work),
                Command.of("turn", () -> turn(work)).unless(noPart),
                Command.of("flip", () -> flip(work)).unless(noPart),
                Command.of("move", () -> lift(work)).unless(nothingToMove),
                Command.of("cut", () -> cut(work)).by("Shortcut+X").unless(noPart),
                Command.of("copy", work.board()::copy).by("Shortcut+C").unless(noPart),
                Command.of("duplicate", () -> duplicate(work)).by("Shortcut+D").unless(noPart),
                Command.of("delete", () -> delete(work)).unless(nothing),
                Command.of("select-all", () -> hands.choose(everything(work))).by("Shortcut+A"),
                align("align-row", work, AlignParts.Line.ROW).unless(fewParts),
                align("align-column", work, AlignParts.Line.COLUMN).unless(fewParts),
                Command.of("parallel", joining(work, cells -> 1)).by("Shortcut+1"),
                Command.of("series", joining(work, cells -> cells)).by("Shortcut+2"),
                Command.of("rows", onCells(work, () -> inRows(work, askRows))).by("Shortcut+3"),
                PlateCommand.of(work),
                Command.of("card", editor).unless(notOne),
                Command.of("note", () -> work.ground().writeNote())
                        .by("Shortcut+Shift+N")
                        .unless(nothingToNote));
    }

    private static List<Command> with(List<Command> meter, Command... more) {
        return Stream.concat(Stream.of(more), meter.stream()).toList();
    }

    private static BooleanBinding unless(Workbench work, Predicate<Selection> condition) {
        return Bindings.createBooleanBinding(
                () -> !condition.test(work.hands().chosen()),
                work.movesProperty(),
                work.bench().historyProperty());
    }

    private static void onParts(Workbench work, Set<String> parts, Edit edit) {
        if (!parts.isEmpty()) {
            work.perform(edit);
        }
    }

    static void turn(Workbench work) {
        if (work.hands().tool() instanceof Tool.Fresh) {
            work.hands().turnHeld(1);
        } else {
            Set<String> parts = work.hands().chosen().parts();
            onParts(work, parts, new TurnParts(parts, 1));
        }
    }

    static void flip(Workbench work) {
        if (work.hands().tool() instanceof Tool.Fresh) {
            work.hands().turnHeld(2);
        } else {
            Set<String> parts = work.hands().chosen().parts();
            onParts(work, parts, new FlipParts(parts));
        }
    }

    static void lift(Workbench work) {
        Selection chosen = work.hands().chosen();
        BenchLayout lying = work.ground().lying();
        Stream<Point> parts = chosen.parts().stream()
                .sorted()
                .flatMap(id -> lying.part(id).stream())
                .map(box -> new Point(box.x(), box.y()));
        Stream<Point> notes = chosen.notes().stream()
                .flatMap(note -> lying.note(note).stream())
                .map(NoteBox::middle);
        Stream.concat(parts, notes).findFirst().ifPresent(at -> {
            work.ground().takeFocus();
            work.hands().lift(at.x(), at.y());
        });
    }

    /** What could not be copied is not taken away. */
    private static void cut(Workbench work) {
        if (work.board().copy()) {
            delete(work);
        }
    }

    static void duplicate(Workbench work) {
        Set<String> parts = work.hands().chosen().parts();
        int step = CopyPlace.of(work.ground().lying(), parts);
        List<String> before =
                work.bench().scenario().parts().stream().map(p -> p.id()).toList();
        onParts(work, parts, new DuplicateParts(parts, step, 0));
        Set<String> copies = newParts(work, before);
        // What is chosen is what arrows and letters go on with.
        copies.stream().findFirst().ifPresent(work.ground()::focusPart);
        work.hands().choose(Selection.of(copies, Set.of()));
    }

    /** Parts that have come to the bench since. */
    static Set<String> newParts(Workbench work, List<String> before) {
        return work.bench().scenario().parts().stream()
                .map(part -> part.id())
                .filter(id -> !before.contains(id))
                .collect(Collectors.toSet());
    }

    static void delete(Workbench work) {
        Selection chosen = work.hands().chosen();
        if (!chosen.parts().isEmpty()) {
            work.perform(new DeleteParts(chosen.parts()));
        } else if (!chosen.links().isEmpty()) {
            work.perform(new CutLinks(chosen.links()));
        } else if (!chosen.notes().isEmpty()) {
            work.perform(new DeleteNotes(chosen.notes()));
        }
        work.hands().choose(Selection.NOTHING);
    }

    private static Selection everything(Workbench work) {
        return Selection.of(newParts(work, List.of()), Set.of());
    }

    private static Command align(String id, Workbench work, AlignParts.Line line) {
        return Command.of(
                id, () -> work.perform(new AlignParts(work.hands().chosen().parts(), line)));
    }

    /** The chosen cells, or all of them where fewer than two are chosen. */
    public static List<String> cells(Workbench work) {
        Scenario scenario = work.bench().scenario();
        List<String> chosen =
                ArrangeCells.cellsAmong(scenario, work.hands().chosen().parts());
        return chosen.size() > 1 ? chosen : ArrangeCells.cellsAmong(scenario, newParts(work, List.of()));
    }

    /** In how many rows the cells can be joined other than in one or one by one. */
    public static List<Integer> rows(Workbench work) {
        int cells = cells(work).size();
        return ArrangeCells.choices(cells).stream()
                .filter(rows -> rows > 1 && rows < cells)
                .toList();
    }

    /** What needs two cells or more; where there are fewer, says so and what to do about it. */
    public static Runnable onCells(Workbench work, Runnable action) {
        return () -> {
            int cells = cells(work).size();
            if (cells > 1) {
                action.run();
            } else {
                work.say(work.wording().say(cells == 1 ? "layout.one-cell" : "layout.no-cell"));
            }
        };
    }

    /** One cell alone has no layout, but a loop that can be closed. */
    private static Runnable joining(Workbench work, IntUnaryOperator rows) {
        Runnable several =
                onCells(work, () -> arrange(work, rows.applyAsInt(cells(work).size())));
        return () -> {
            Scenario before = work.bench().scenario();
            if (cells(work).size() == 1) {
                arrange(work, 1);
            }
            if (before.equals(work.bench().scenario())) {
                several.run();
            }
        };
    }

    /** Where there is only one way, there is nothing to ask. */
    private static void inRows(Workbench work, Runnable askRows) {
        List<Integer> rows = rows(work);
        if (rows.isEmpty()) {
            work.say(work.wording().say("layout.no-rows", cells(work).size()));
        } else if (rows.size() == 1) {
            arrange(work, rows.get(0));
        } else {
            askRows.run();
        }
    }

    /** Joins the cells anew, in so many rows. */
    public static void arrange(Workbench work, int rows) {
        work.perform(new ArrangeCells(cells(work), rows, JointChoice.CONTACT_MOHM));
    }
}
