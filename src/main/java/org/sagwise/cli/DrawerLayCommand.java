package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import org.sagwise.part.PartKind;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Puts cells of a drawer in place of those of a scenario. */
@Command(name = "lay", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerLayCommand extends DrawerVerb {

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "file")
    private String file;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "CELL=MARK", descriptionKey = "drawer.lay")
    private Map<String, String> cells;

    @Mixin
    private ScenarioOutput output;

    DrawerLayCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        GivenScenario given = new ScenarioInput(context()).read(file);
        if (given.scenario().isEmpty()) {
            given.complain(context());
            return ExitStatus.WRONG;
        }
        return look(drawer -> laid(given.scenario().get(), drawer));
    }

    private int laid(Scenario before, Drawer drawer) {
        if (complain(drawer.unknown(cells.values()))) {
            return ExitStatus.WRONG;
        }
        Scenario bench = before;
        for (Map.Entry<String, String> each : cells.entrySet()) {
            OwnCell cell = drawer.find(each.getValue()).orElseThrow();
            if (bench.part(each.getKey())
                    .filter(part -> part.kind() == PartKind.CELL)
                    .isEmpty()) {
                context().problem(words().say("cli.no-cell", each.getKey(), cellsOf(bench)));
                return ExitStatus.WRONG;
            } else if (!DrawerBench.canLie(cell)) {
                context().problem(words().say("lay.unknown", cell.mark()));
                return ExitStatus.WRONG;
            }
            Edit edit = DrawerBench.inPlaceOf(each.getKey(), cell, drawer, catalogue());
            List<Finding> wrong = edit.refusal(bench, new ScenarioRules(catalogue()));
            if (complain(wrong)) {
                return ExitStatus.WRONG;
            }
            bench = edit.apply(bench);
        }
        return output.write(context(), bench);
    }

    private static String cellsOf(Scenario bench) {
        return String.join(
                ", ",
                bench.partsOf(PartKind.CELL).stream().map(part -> part.id()).toList());
    }
}
