package org.sagwise.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.sagwise.quantity.Unit;
import org.sagwise.run.LifeTogether;
import org.sagwise.run.RunTexts;

/** How the cells of a pack age together, as a table with a column for each cell. */
final class LifeText {

    private LifeText() {}

    static List<String> lines(CallContext call, RunReport report, RunTexts words) {
        List<String> ids = List.copyOf(report.life().get(0).health().keySet());
        TextTable table = new TextTable(sides(ids.size() + 2));
        table.row(row(
                call.printable(call.texts().say("head.cycles")),
                call.printable(call.texts().say("head.lasts")),
                ids.stream().map(id -> call.printable(words.name(id)))));
        for (LifeTogether.Age age : report.life()) {
            table.row(row(
                    String.valueOf(age.cycles()),
                    call.format().print(age.firedS(), Unit.SECOND),
                    ids.stream()
                            .map(age.health()::get)
                            .map(health -> call.format().print(health, Unit.FRACTION))));
        }
        List<String> lines = new ArrayList<>(List.of(""));
        lines.addAll(Paragraph.lines(call.texts().say("run.life"), ""));
        lines.add("");
        lines.addAll(table.lines());
        lines.addAll(Paragraph.lines(call.texts().say("run.life-teaching"), ""));
        return lines;
    }

    private static String[] row(String first, String second, Stream<String> others) {
        return Stream.concat(Stream.of(first, second), others).toArray(String[]::new);
    }

    private static TextTable.Side[] sides(int columns) {
        TextTable.Side[] sides = new TextTable.Side[columns];
        Arrays.fill(sides, TextTable.Side.RIGHT);
        return sides;
    }
}
