package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.quantity.Measure;
import org.sagwise.scenario.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a cell into a drawer. */
@Command(name = "add", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerAddCommand extends DrawerVerb {

    @Parameters(paramLabel = "MARK", descriptionKey = "drawer.mark")
    private String mark;

    @Option(names = "--model", paramLabel = "ID", descriptionKey = "drawer.model")
    private String model;

    @Option(names = "--name", paramLabel = "WORDS", descriptionKey = "drawer.name")
    private String name;

    @Option(names = "--chemistry", paramLabel = "WORD", descriptionKey = "drawer.chemistry")
    private String chemistry;

    @Option(names = "--format", paramLabel = "WORD", descriptionKey = "drawer.format")
    private String format;

    @Option(names = "--capacity", paramLabel = "MAH", descriptionKey = "drawer.rated")
    private String capacity;

    @Option(names = "--resistance", paramLabel = "MOHM", descriptionKey = "drawer.rated-ohm")
    private String resistance;

    @Option(names = "--limit", paramLabel = "A", descriptionKey = "measured.limit")
    private String limit;

    @Option(names = "--bought", paramLabel = "DAY", descriptionKey = "drawer.bought")
    private String bought;

    @Option(names = "--note", paramLabel = "WORDS", descriptionKey = "drawer.note")
    private String note;

    DrawerAddCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        Keys keys = keys();
        return change(drawer -> {
            List<Finding> wrong = drawer.find(mark).isPresent()
                    ? List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, mark))
                    : DrawerKeys.checkCell(keys, "", catalogue());
            return complain(wrong) ? Optional.empty() : Optional.of(drawer.with(OwnCell.of(keys, List.of())));
        });
    }

    private Keys keys() {
        Keys keys = Keys.of("mark", mark.strip());
        keys = with(keys, "name", name);
        keys = with(keys, "model", model);
        keys = with(keys, "chemistry", chemistry);
        keys = with(keys, "format", format);
        keys = with(keys, "capacity_mAh", "--capacity", capacity);
        keys = with(keys, "internal_mohm", "--resistance", resistance);
        keys = with(keys, "limit_A", "--limit", limit);
        keys = bought == null
                ? keys
                : keys.with("bought", day("--bought", bought).toString());
        return with(keys, "note", note);
    }

    private static Keys with(Keys keys, String name, String text) {
        return text == null || text.isBlank() ? keys : keys.with(name, text.strip());
    }

    private Keys with(Keys keys, String name, String option, String text) {
        if (text == null) {
            return keys;
        }
        Measure measure = Measure.ofKey(name).orElseThrow();
        return keys.with(name, measure.scale().fromUnit(amounts().above(option, text, measure)));
    }
}
