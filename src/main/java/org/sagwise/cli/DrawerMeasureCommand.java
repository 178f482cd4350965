package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes down what was measured on a cell. */
@Command(name = "measure", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerMeasureCommand extends DrawerVerb {

    @Parameters(paramLabel = "MARK", descriptionKey = "drawer.mark")
    private String mark;

    @Option(names = "--on", paramLabel = "DAY", descriptionKey = "drawer.on")
    private String on;

    @Option(names = "--capacity", paramLabel = "MAH", descriptionKey = "drawer.capacity")
    private String capacity;

    @Option(names = "--resistance", paramLabel = "MOHM", descriptionKey = "drawer.resistance")
    private String resistance;

    @Option(names = "--rest", paramLabel = "V", descriptionKey = "drawer.rest")
    private String rest;

    @Option(names = "--week", paramLabel = "V", descriptionKey = "drawer.week")
    private String week;

    @Option(names = "--how", paramLabel = "WORDS", descriptionKey = "drawer.how")
    private String how;

    DrawerMeasureCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        CellMeasurement measured = new CellMeasurement(
                day("--on", on),
                value("--capacity", capacity, Measure.of(Unit.AMPERE_HOUR, "mAh")),
                value("--resistance", resistance, Measure.of(Unit.OHM, "mΩ")),
                value("--rest", rest, Measure.of(Unit.VOLT)),
                value("--week", week, Measure.of(Unit.VOLT)),
                how == null ? "" : how.strip(),
                Optional.empty());
        return change(drawer -> {
            if (complain(drawer.unknown(List.of(mark))) || complain(DrawerKeys.checkMeasured(measured.keys(), ""))) {
                return Optional.empty();
            }
            OwnCell cell = drawer.find(mark).orElseThrow().with(measured);
            words().advice(cell).ifPresent(context()::result);
            return Optional.of(drawer.with(cell));
        });
    }

    private OptionalDouble value(String option, String text, Measure measure) {
        return text == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(amounts().any(option, text, measure));
    }
}
