package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.cli.TextTable.Side;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.MatchedSet;
import org.sagwise.plan.pairing.Matching;
import org.sagwise.plan.pairing.PackLife;
import org.sagwise.plan.pairing.PairingWish;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Finds the cells that belong together. */
@Command(name = "pair", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerPairCommand extends DrawerVerb {

    @Option(names = "--cells", paramLabel = "N", defaultValue = "2", descriptionKey = "drawer.cells")
    private int size;

    @Option(names = "--capacity-weight", paramLabel = "N", descriptionKey = "drawer.capacity-weight")
    private String capacityWeight;

    @Option(names = "--resistance-weight", paramLabel = "N", descriptionKey = "drawer.resistance-weight")
    private String resistanceWeight;

    @Option(names = "--married-too", descriptionKey = "drawer.married-too")
    private boolean marriedToo;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    DrawerPairCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        PairingWish wish = wish();
        return look(drawer -> {
            Matching matching = Matching.of(drawer, wish, catalogue());
            Optional<PackLife> life = PackLife.of(matching, drawer, catalogue());
            if (json) {
                json(matching, life);
            } else {
                text(drawer, matching, life);
            }
            return ExitStatus.DONE;
        });
    }

    private PairingWish wish() {
        if (size < 2 || size > PairingWish.MOST_SIZE) {
            throw amounts().wrong(words().say("cli.size", size, PairingWish.MOST_SIZE));
        }
        double capacity = weight("--capacity-weight", capacityWeight, PairingWish.PAIRS.capacityWeight());
        double resistance = weight("--resistance-weight", resistanceWeight, PairingWish.PAIRS.resistanceWeight());
        if (!(capacity + resistance > 0) || capacity + resistance > 1e6) {
            throw amounts().wrong(words().say("cli.weights"));
        }
        return new PairingWish(size, capacity, resistance, marriedToo);
    }

    private double weight(String option, String text, double otherwise) {
        return text == null ? otherwise : amounts().fromZero(option, text, Measure.of(Unit.FRACTION));
    }

    private void text(Drawer drawer, Matching matching, Optional<PackLife> life) {
        DrawerWords words = words();
        context().result(words.say("cli.place", place()));
        context().result(words.how(matching.wish()));
        if (matching.sets().isEmpty()) {
            context().result(words.say("pair.none", matching.wish().size()));
        } else {
            TextTable table = new TextTable(Side.LEFT, Side.RIGHT, Side.RIGHT, Side.LEFT)
                    .row(
                            words.say("column.set"),
                            words.say("column.capacity-spread"),
                            words.say("column.resistance-spread"),
                            words.say("column.each"));
            matching.sets()
                    .forEach(set -> table.row(
                            String.join(" + ", set.marks()),
                            context().format().print(set.capacitySpread(), Unit.FRACTION),
                            context().format().print(set.resistanceSpread(), Unit.FRACTION),
                            set.cells().stream().map(this::each).collect(Collectors.joining("; "))));
            table.lines().forEach(context()::result);
        }
        if (!matching.left().isEmpty()) {
            context()
                    .result(words.say(
                            "pair.left",
                            matching.left().stream().map(OwnCell::mark).collect(Collectors.joining(", "))));
        }
        matching.unfit().forEach((cell, why) -> context().result(words.unfit(cell, why, matching.wish())));
        life.ifPresent(it -> context().result(words.life(it, matching.wish())));
        context().result(Texts.in("cautions", context().locale()).raw("mixed-health.advice"));
    }

    private String each(OwnCell cell) {
        return words().capacity(cell.capacityAh()) + " " + words().resistance(cell.resistanceOhm());
    }

    private void json(Matching matching, Optional<PackLife> life) {
        JsonWriter.write(
                context().out(),
                context().signs(),
                json -> json.object(() -> {
                    json.text("drawer", place());
                    json.whole("cells", matching.wish().size());
                    json.number("capacity_weight", matching.wish().capacityWeight());
                    json.number("resistance_weight", matching.wish().resistanceWeight());
                    json.objects("sets", matching.sets(), set -> set(json, set));
                    json.texts(
                            "left", matching.left().stream().map(OwnCell::mark).toList());
                    json.objects("unfit", List.copyOf(matching.unfit().entrySet()), entry -> {
                        json.text("mark", entry.getKey().mark());
                        json.text("why", Words.of(entry.getValue()));
                    });
                    if (life.isEmpty()) {
                        json.nothing("life");
                    } else {
                        json.object("life", () -> {
                            json.number("matched_s", life.get().matchedS());
                            json.number("drawn_s", life.get().drawnS());
                            json.number("gain", life.get().gain());
                            json.number("load_A", life.get().loadA());
                            json.whole("draws", life.get().draws());
                        });
                    }
                }));
    }

    private static void set(JsonWriter json, MatchedSet set) {
        json.texts("marks", set.marks());
        json.number("capacity_spread", set.capacitySpread());
        json.number("resistance_spread", set.resistanceSpread());
        json.number("cost", set.cost());
    }
}
