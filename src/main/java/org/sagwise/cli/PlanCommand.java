package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoDrawer;
import org.sagwise.file.DrawerFile;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.pack.PackCell;
import org.sagwise.plan.pack.PackChoice;
import org.sagwise.plan.pack.PackPlan;
import org.sagwise.plan.pack.PackPlanner;
import org.sagwise.plan.pack.PackWish;
import org.sagwise.plan.pack.PackWords;
import org.sagwise.quantity.Durations;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Chooses cells and layout for a wish. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PlanCommand implements Callable<Integer> {

    private static final int USUAL_CELLS = 4;
    private static final int SHOWN = 12;

    /** The drawer in the folder of the user's data. */
    private static final String OWN_DRAWER = "";

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Option(names = "--watts", paramLabel = "W", descriptionKey = "plan.watts")
    private String watts;

    @Option(names = "--coil", paramLabel = "OHM", descriptionKey = "plan.coil")
    private String coil;

    @Option(names = "--regulated", descriptionKey = "plan.regulated")
    private boolean regulated;

    @Option(names = "--lasts", paramLabel = "TIME", descriptionKey = "plan.lasts")
    private String lasts;

    @Option(names = "--presses", paramLabel = "N", descriptionKey = "plan.presses")
    private Integer presses;

    @Option(names = "--cells", paramLabel = "N", descriptionKey = "plan.cells")
    private int cells = USUAL_CELLS;

    @Option(names = "--cell", paramLabel = "ID", descriptionKey = "plan.cell")
    private List<String> cell = List.of();

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "plan.format")
    private String format;

    @Option(
            names = "--drawer",
            arity = "0..1",
            fallbackValue = OWN_DRAWER,
            paramLabel = "FILE",
            descriptionKey = "plan.drawer")
    private String drawer;

    @Option(names = "--all", descriptionKey = "plan.all")
    private boolean all;

    @Option(names = "--pick", paramLabel = "N", descriptionKey = "plan.pick")
    private Integer pick;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Mixin
    private ScenarioOutput output;

    PlanCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        PackWish wish = wish();
        List<PackCell> kinds = kinds();
        Catalogue catalogue = CatalogueLoader.builtIn();
        PackPlan plan = PackPlanner.plan(wish, kinds, catalogue, call.locale(), PackPlanner.Progress.NONE);
        int picked = pick == null ? 1 : pick;
        if (pick != null && (pick < 1 || pick > plan.choices().size())) {
            throw wrong("plan.no-pick", pick, plan.choices().size());
        }
        Optional<PackChoice> chosen = pick != null
                ? Optional.of(plan.choices().get(picked - 1))
                : plan.best().or(plan::nearest);
        if (output.isNamed()) {
            int written = write(chosen);
            if (written != ExitStatus.DONE || output.isPrinted()) {
                return written;
            }
        }
        if (json) {
            PlanJson.write(call, plan);
        } else {
            text(plan, chosen, catalogue);
        }
        return ExitStatus.DONE;
    }

    private int write(Optional<PackChoice> chosen) {
        if (chosen.isEmpty()) {
            call.problem(call.texts().say("plan.nothing"));
            return ExitStatus.WRONG;
        }
        return output.write(call, chosen.get().bench());
    }

    private PackWish wish() {
        Amounts amounts = new Amounts(call, spec);
        OptionalDouble wantedW =
                watts == null ? OptionalDouble.empty() : OptionalDouble.of(amounts.above("--watts", watts, Unit.WATT));
        OptionalDouble wantedOhm =
                coil == null ? OptionalDouble.empty() : OptionalDouble.of(amounts.above("--coil", coil, Unit.OHM));
        if (wantedW.isEmpty() && (wantedOhm.isEmpty() || regulated)) {
            throw wrong(regulated ? "plan.regulated-watts" : "plan.no-wish");
        }
        if (wantedW.isPresent() && wantedOhm.isPresent() && !regulated) {
            throw wrong("plan.watts-or-coil");
        }
        if (cells < 1 || cells > PackWish.MOST_CELLS) {
            throw wrong("plan.cells-range", PackWish.MOST_CELLS);
        }
        return new PackWish(wantedW, wantedOhm, regulated, lastsS(amounts), cells);
    }

    private OptionalDouble lastsS(Amounts amounts) {
        if (lasts != null && presses != null) {
            throw wrong("wrong.one-of", "--lasts, --presses");
        }
        if (presses != null) {
            if (presses < 1) {
                throw wrong("measured.not-above", "--presses", presses);
            }
            return OptionalDouble.of(PackWish.lastsS(presses));
        }
        if (lasts == null) {
            return OptionalDouble.empty();
        }
        Parsed parsed = Durations.parse(lasts, call.locale());
        if (parsed instanceof Parsed.Refused refused) {
            throw amounts.wrong("--lasts: " + refused.text(call.locale()));
        }
        if (!(parsed.value().orElse(0) > 0)) {
            throw wrong("measured.not-above", "--lasts", lasts);
        }
        return parsed.value();
    }

    private List<PackCell> kinds() {
        if (drawer != null) {
            return own();
        }
        List<PartModel> models =
                List.copyOf(CatalogueLoader.builtIn().models(PartKind.CELL).all());
        List<String> ids = models.stream().map(PartModel::id).toList();
        for (String id : cell) {
            if (!ids.contains(id)) {
                throw new Amounts(call, spec).wrong(WrongValue.words(call.texts(), "--cell", id, ids));
            }
        }
        Stream<PartModel> wanted =
                models.stream().filter(model -> cell.isEmpty() ? !PackCell.isPoor(model) : cell.contains(model.id()));
        List<PackCell> kinds = wanted.map(PackCell::of).filter(this::fits).toList();
        if (kinds.isEmpty()) {
            throw wrong("plan.no-cells");
        }
        return kinds;
    }

    private boolean fits(PackCell kind) {
        return format == null || format.equals(kind.format());
    }

    /** What is in the drawer, of the kinds that were asked for. */
    private List<PackCell> own() {
        Catalogue catalogue = CatalogueLoader.builtIn();
        List<PackCell> kinds = PackCell.of(opened(catalogue), catalogue).stream()
                .filter(kind -> cell.isEmpty() || cell.contains(kind.name()))
                .filter(this::fits)
                .toList();
        if (kinds.isEmpty()) {
            throw wrong("plan.empty-drawer");
        }
        return kinds;
    }

    private Drawer opened(Catalogue catalogue) {
        GivenDrawer given =
                new GivenDrawer(Optional.of(drawer).filter(name -> !name.equals(OWN_DRAWER)), new Amounts(call, spec));
        if (given.isDemo()) {
            return DemoDrawer.of(catalogue, call.locale());
        }
        DrawerFile.Opened opened = given.file().open();
        if (opened instanceof DrawerFile.Opened.Refused refused) {
            String why = refused.findings().stream()
                    .map(finding -> finding.text(call.locale()))
                    .collect(Collectors.joining(" "));
            throw wrong("wrong.line", given.path(), why);
        }
        return ((DrawerFile.Opened.Ok) opened).drawer();
    }

    private RuntimeException wrong(String key, Object... words) {
        return new Amounts(call, spec).wrong(call.texts().say(key, words));
    }

    private void text(PackPlan plan, Optional<PackChoice> chosen, Catalogue catalogue) {
        PackWords words = PackWords.byId(call.format());
        List<String> lines = new ArrayList<>();
        lines.addAll(Paragraph.lines(words.wish(plan.wish()), ""));
        lines.addAll(Paragraph.lines(words.answer(plan), ""));
        lines.add("");
        lines.addAll(table(plan, words));
        chosen.ifPresent(choice -> {
            lines.add("");
            words.rows(choice, catalogue)
                    .forEach(row -> lines.addAll(Paragraph.lines(row.label() + ": " + row.value(), "  ")));
            lines.add("");
            lines.addAll(Paragraph.lines(call.texts().say("plan.open"), ""));
        });
        lines.add("");
        words.notes(plan, catalogue).forEach(note -> lines.addAll(Paragraph.lines(note, "")));
        lines.addAll(Paragraph.lines(call.texts().say("teaching"), ""));
        lines.forEach(call::result);
    }

    private List<String> table(PackPlan plan, PackWords words) {
        PackWords.Column[] columns = PackWords.Column.values();
        TextTable.Side[] sides = new TextTable.Side[columns.length + 1];
        String[] heads = new String[columns.length + 1];
        sides[0] = TextTable.Side.RIGHT;
        heads[0] = "";
        for (int i = 0; i < columns.length; i++) {
            boolean number = columns[i] != PackWords.Column.CELL
                    && columns[i] != PackWords.Column.LAYOUT
                    && columns[i] != PackWords.Column.VERDICT;
            sides[i + 1] = number ? TextTable.Side.RIGHT : TextTable.Side.LEFT;
            heads[i + 1] = call.printable(words.head(columns[i]));
        }
        TextTable table = new TextTable(sides).row(heads);
        int shown = all ? plan.choices().size() : Math.min(SHOWN, plan.choices().size());
        for (int place = 0; place < shown; place++) {
            String[] cellsOfRow = new String[columns.length + 1];
            cellsOfRow[0] = String.valueOf(place + 1);
            for (int i = 0; i < columns.length; i++) {
                cellsOfRow[i + 1] = call.printable(words.cell(plan.choices().get(place), columns[i]));
            }
            table.row(cellsOfRow);
        }
        List<String> lines = new ArrayList<>(table.lines());
        int left = plan.choices().size() - shown;
        if (left > 0) {
            lines.add(call.texts().say("plan.more", left));
        }
        return lines;
    }
}
