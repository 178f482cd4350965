package org.sagwise.cli;

import java.util.List;
import org.sagwise.cli.TextTable.Side;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.Fitness;
import org.sagwise.scenario.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the cells of a drawer. */
@Command(name = "list", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerListCommand extends DrawerVerb {

    @Parameters(arity = "0..*", paramLabel = "MARK", descriptionKey = "drawer.some")
    private List<String> marks = List.of();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    DrawerListCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        return look(drawer -> {
            if (complain(drawer.unknown(marks))) {
                return ExitStatus.WRONG;
            }
            List<OwnCell> cells = drawer.cells().stream()
                    .filter(cell -> marks.isEmpty() || marks.contains(cell.mark()))
                    .toList();
            if (json) {
                json(cells);
            } else {
                text(drawer, cells);
            }
            return ExitStatus.DONE;
        });
    }

    private void text(Drawer drawer, List<OwnCell> cells) {
        DrawerWords words = words();
        context().result(words.say("cli.place", place()));
        if (drawer.cells().isEmpty()) {
            context()
                    .result(Finding.of("", DrawerProblem.NO_CELLS)
                            .sentence(context().locale()));
            return;
        }
        TextTable table = new TextTable(
                Side.LEFT, Side.LEFT, Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.RIGHT, Side.LEFT, Side.LEFT);
        table.row(
                List.of("mark", "make", "capacity", "share", "resistance", "rest", "lost", "measured", "state").stream()
                        .map(head -> words.say("column." + head))
                        .toArray(String[]::new));
        for (OwnCell cell : cells) {
            table.row(
                    cell.mark(),
                    words.make(cell),
                    words.capacity(cell.capacityAh()),
                    words.share(Fitness.share(cell, catalogue())),
                    words.resistance(cell.resistanceOhm()),
                    words.volts(cell.restV()),
                    words.lost(cell),
                    cell.measuredOn().map(Object::toString).orElse(""),
                    words.state(cell));
        }
        table.lines().forEach(context()::result);
        cells.stream().flatMap(cell -> words.advice(cell).stream()).forEach(context()::result);
    }

    private void json(List<OwnCell> cells) {
        JsonWriter.write(
                context().out(),
                context().signs(),
                json -> json.object(() -> {
                    json.text("drawer", place());
                    json.objects("cells", cells, cell -> cell(json, cell));
                }));
    }

    private void cell(JsonWriter json, OwnCell cell) {
        json.text("mark", cell.mark());
        json.text("name", cell.name());
        json.text("model", cell.model().orElse(""));
        json.flag("in_use", cell.isInUse());
        json.text("married", cell.marriage().map(it -> it.set()).orElse(""));
        json.number("rated_mAh", cell.ratedAh(catalogue()).orElse(Double.NaN) * 1_000);
        json.number("capacity_mAh", cell.capacityAh().orElse(Double.NaN) * 1_000);
        json.number("capacity_share", Fitness.share(cell, catalogue()).orElse(Double.NaN));
        json.number("internal_mohm", cell.resistanceOhm().orElse(Double.NaN) * 1_000);
        json.number("rest_V", cell.restV().orElse(Double.NaN));
        json.number("lost_V", cell.lostV().orElse(Double.NaN));
        json.text("advice", words().advice(cell).orElse(""));
        json.objects("measured", cell.measurements(), measured -> measured(json, measured));
    }

    private static void measured(JsonWriter json, CellMeasurement measured) {
        measured.keys().without("x").values().forEach((key, value) -> {
            if (value instanceof Double number) {
                json.number(key, number);
            } else {
                json.text(key, String.valueOf(value));
            }
        });
    }
}
