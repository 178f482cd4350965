package org.sagwise.plan.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.pack.PackChoice.Course;
import org.sagwise.plan.pack.PackPlan.Refusal;
import org.sagwise.plan.pack.PackPlan.Why;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.PairingWish;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunTexts;
import org.sagwise.text.Texts;

/**
 * What came of a wish, in words: the same in window and command line.
 *
 * @param format how numbers are printed
 * @param cells what a kind of cell is called, by its name in the plan
 */
public record PackWords(QuantityFormat format, UnaryOperator<String> cells) {

    /** Calls cells by their ids, for those who will type them. */
    public static PackWords byId(QuantityFormat format) {
        return new PackWords(format, UnaryOperator.identity());
    }

    /** Calls cells as the catalogue does, for those who will read only. */
    public static PackWords byTitle(QuantityFormat format, Catalogue catalogue) {
        return new PackWords(
                format,
                id -> catalogue
                        .models(PartKind.CELL)
                        .find(id)
                        .map(model -> model.card().title().in(format.locale()))
                        .orElse(id));
    }

    /** Columns of a table, in order. */
    public enum Column {
        CELL,
        LAYOUT,
        COIL,
        POWER,
        SHARE,
        LASTS,
        VERDICT;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A quantity.
     *
     * @param key what it is
     * @param label the same for people
     */
    public record Row(String key, String label, String value) {}

    /** What stands above a column. */
    public String head(Column column) {
        return say("head." + column.key());
    }

    /** What stands in it. */
    public String cell(PackChoice choice, Column column) {
        return switch (column) {
            case CELL -> name(choice);
            case LAYOUT -> choice.layout();
            case COIL -> print(choice.coilOhm(), Unit.OHM);
            case POWER -> print(choice.full().coilW(), Unit.WATT);
            case SHARE -> print(choice.share(), Unit.FRACTION);
            case LASTS -> lasts(choice);
            case VERDICT -> verdict(choice);
        };
    }

    /** What the kind of its cells is called. */
    public String name(PackChoice choice) {
        return cells.apply(choice.cell());
    }

    private String lasts(PackChoice choice) {
        return choice.course()
                .map(course -> say(course.isLowerBound() ? "lasts.more" : "lasts", print(course.timeS(), Unit.SECOND)))
                .orElse(say("not-run"));
    }

    /** Whether it is what was wished, in few words. */
    public String verdict(PackChoice choice) {
        return say("verdict." + choice.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** The wish, in a sentence. */
    public String wish(PackWish wish) {
        String what = wish.watts().isPresent()
                ? say(wish.regulated() ? "wish.regulated" : "wish.watts", print(wish.watts(), Unit.WATT))
                : say("wish.coil", print(wish.coilOhm(), Unit.OHM));
        return wish.lastsS().isPresent()
                ? say("wish.lasts", what, print(wish.lastsS(), Unit.SECOND), wish.mostCells())
                : say("wish.any", what, wish.mostCells());
    }

    /** The answer, in a sentence or two; what cannot be done says why. */
    public String answer(PackPlan plan) {
        Optional<PackChoice> best = plan.best();
        if (best.isPresent()) {
            return say("best", describe(best.get()));
        }
        PackWish wish = plan.wish();
        String cannot = wish.watts().isPresent()
                ? say("cannot.watts", print(wish.watts(), Unit.WATT))
                : say("cannot.coil", print(wish.coilOhm(), Unit.OHM));
        String time = wish.lastsS().isPresent() ? say("cannot.lasts", print(wish.lastsS(), Unit.SECOND)) : "";
        String sentence = cannot + time + say("cannot.limits");
        if (plan.nearest().isPresent()) {
            PackChoice near = plan.nearest().get();
            return sentence + " " + say("nearest", describe(near), verdict(near));
        }
        return Double.isNaN(plan.mostW()) ? sentence : sentence + " " + say("most", print(plan.mostW(), Unit.WATT));
    }

    private String describe(PackChoice choice) {
        String what = say(
                "describe",
                choice.layout(),
                name(choice),
                print(choice.coilOhm(), Unit.OHM),
                print(choice.full().coilW(), Unit.WATT),
                print(choice.share(), Unit.FRACTION));
        return choice.course()
                .map(course -> say("describe.lasts", what, lasts(choice), course.presses()))
                .orElse(what);
    }

    /** All there is to say of one layout. */
    public List<Row> rows(PackChoice choice, Catalogue catalogue) {
        List<Row> rows = new ArrayList<>();
        row(rows, "layout", say("layout.value", choice.layout(), name(choice), choice.cells()));
        String marks = choice.bench().partsOf(PartKind.CELL).stream()
                .flatMap(part -> part.keys().text("mark").stream())
                .collect(Collectors.joining(", "));
        if (!marks.isEmpty()) {
            row(rows, "marks", marks);
        }
        row(rows, "coil", print(choice.coilOhm(), Unit.OHM));
        row(rows, "cell", print(choice.full().cellA(), Unit.AMPERE));
        row(rows, "share", print(choice.share(), Unit.FRACTION));
        row(rows, "watts", moments(choice, PackMoment::coilW, Unit.WATT));
        row(rows, "sag", moments(choice, PackMoment::sagV, Unit.VOLT));
        row(rows, "cell-heat", moments(choice, PackMoment::cellHeatW, Unit.WATT));
        row(rows, "joint-heat", moments(choice, PackMoment::jointHeatW, Unit.WATT));
        choice.course().ifPresent(course -> {
            row(
                    rows,
                    "lasts",
                    say("lasts.value", lasts(choice), course.presses(), print(course.firedS(), Unit.SECOND)));
            row(rows, "warm", print(course.peakC(), Unit.CELSIUS));
            row(rows, "first", first(choice, course, catalogue));
        });
        row(rows, "wire", say("wire.value", choice.awg()));
        row(rows, "fuse", fuse(choice.fuseA()));
        row(rows, "cautions", cautions(choice));
        return rows;
    }

    private String fuse(OptionalDouble rating) {
        return rating.isPresent() ? print(rating, Unit.AMPERE) : say("no-fuse");
    }

    private interface Quantity {
        double of(PackMoment moment);
    }

    private String moments(PackChoice choice, Quantity quantity, Unit unit) {
        String full = print(quantity.of(choice.full()), unit);
        String half = print(quantity.of(choice.half()), unit);
        return choice.course()
                .map(course -> say("moments", full, half, print(quantity.of(course.last()), unit)))
                .orElse(say("moments.two", full, half));
    }

    private String first(PackChoice choice, Course course, Catalogue catalogue) {
        if (course.end() == RunEnd.TOO_LONG) {
            return say("first.unknown");
        }
        RunTexts texts = new RunTexts(Bench.of(choice.bench(), catalogue), format);
        return course.first().map(texts::sentence).orElse(texts.end(course.end()));
    }

    private String cautions(PackChoice choice) {
        return choice.cautions().isEmpty()
                ? say("no-cautions")
                : choice.cautions().stream()
                        .map(it -> CautionTexts.signal(it.signal(), format.locale()) + ": "
                                + CautionTexts.title(it, format.locale()))
                        .distinct()
                        .collect(Collectors.joining("; "));
    }

    private void row(List<Row> rows, String key, String value) {
        rows.add(new Row(key, say("row." + key), value));
    }

    /** What a person should know of the answer: what was left out, and why. */
    public List<String> notes(PackPlan plan, Catalogue catalogue) {
        List<String> notes = new ArrayList<>();
        if (!plan.isComplete()) {
            notes.add(say("note.called-off"));
        }
        if (plan.notRun() > 0) {
            notes.add(say("note.not-run", plan.notRun()));
        }
        long watts = count(plan, Why.TOO_MANY_WATTS);
        if (watts > 0) {
            notes.add(say("note.watts", watts, print(plan.mostW(), Unit.WATT)));
        }
        long few = count(plan, Why.TOO_FEW_CELLS);
        if (few > 0) {
            notes.add(say("note.few", few));
        }
        long nothing = count(plan, Why.GIVES_NOTHING);
        if (nothing > 0) {
            notes.add(say("note.nothing", nothing));
        }
        if (!plan.leftOut().isEmpty()) {
            DrawerWords drawer = new DrawerWords(format, catalogue);
            notes.add(say(
                    "note.left-out",
                    plan.leftOut().entrySet().stream()
                            .map(it -> drawer.unfit(it.getKey(), it.getValue(), PairingWish.PAIRS))
                            .collect(Collectors.joining(" "))));
        }
        if (plan.choices().stream().anyMatch(PackChoice::needsWatching)) {
            notes.add(say("note.rows"));
        }
        notes.add(say("note.built"));
        return notes;
    }

    private static long count(PackPlan plan, Why why) {
        return plan.refused().stream().map(Refusal::why).filter(why::equals).count();
    }

    private String print(double value, Unit unit) {
        return format.print(value, unit);
    }

    private String print(OptionalDouble value, Unit unit) {
        return format.print(value, unit);
    }

    private String say(String key, Object... words) {
        return Texts.in("plan", format.locale()).say("pack." + key, words);
    }
}
