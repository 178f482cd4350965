package org.sagwise.plan.pack;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellSpec;
import org.sagwise.part.Gauge;
import org.sagwise.part.PartKind;
import org.sagwise.part.WireLimits;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;

/** Lays a layout out as a bench, by a line of trade words. */
record PackBench(PackWish wish, Catalogue catalogue, Locale locale) {

    /** Of a regulated board where nobody says it: as in the catalogue. */
    private static final double EFFICIENCY = 0.92;

    private static final int FIRST_AWG = 14;
    private static final int LENGTH_MM = 80;
    private static final List<Integer> GAUGES = List.of(22, 20, 18, 16, 14, 12, 10);
    private static final String STAND_IN = "inr18650-2500-20A";

    /** What the bench has besides its cells. */
    record Outfit(double coilOhm, int awg, OptionalDouble fuseA) {

        /** Before anything is known of the current. */
        static Outfit first(double coilOhm) {
            return new Outfit(coilOhm, FIRST_AWG, OptionalDouble.empty());
        }
    }

    /** Fuse and wire for the largest current that is to be expected: a board asks for most of cells at their cut-off. */
    Outfit outfit(Outfit bare, PackMoment full, Keys cell, int rows) {
        double mostA = wish.regulated()
                ? wish.watts().getAsDouble() / (EFFICIENCY * rows * spec(cell).cutoffV())
                : full.packA();
        OptionalDouble fuse = fuseA(mostA, full.packA() / full.share());
        return new Outfit(bare.coilOhm(), awg(fuse.orElse(mostA)), fuse);
    }

    private CellSpec spec(Keys cell) {
        Part alone = Part.of(cell(Keys.of("id", "A", "kind", PartKind.CELL.word()), cell));
        return Bench.of(Scenario.of("", List.of(alone), List.of()), catalogue)
                .cells()
                .get("A")
                .spec();
    }

    /** The smallest fuse of the catalogue that carries a current, unless it lets through more than cells bear. */
    private OptionalDouble fuseA(double carriesA, double bearsA) {
        return catalogue.models(PartKind.FUSE).all().stream()
                .mapToDouble(model -> model.keys().number("rating_A", 0))
                .filter(rating -> rating >= carriesA && !(rating > bearsA))
                .min();
    }

    /** The thinnest usual gauge that bears a current all the time; the thickest where none does. */
    private static int awg(double ampere) {
        OptionalInt found = GAUGES.stream()
                .mapToInt(Integer::intValue)
                .filter(number -> WireLimits.steadyCurrentA(new Gauge(number).size()) >= ampere)
                .findFirst();
        return found.orElse(GAUGES.get(GAUGES.size() - 1));
    }

    Scenario build(List<Keys> cells, int rows, int side, Outfit outfit) {
        Scenario bench =
                ((WordsBench.Built) TradeWords.read(line(cells, rows, side, outfit), catalogue, locale)).bench();
        List<Part> parts = bench.partsOf(PartKind.CELL);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            Keys own = cells.get(i);
            if (!own.equals(Keys.of("model", part.model().orElse("")))) {
                bench = bench.withPart(part.id(), old -> laid(old, own));
            }
        }
        return bench;
    }

    private static Part laid(Part place, Keys own) {
        return Part.of(cell(Keys.of("id", place.id(), "kind", place.kind().word()), own));
    }

    /** Full, unless it says otherwise. */
    private static Keys cell(Keys place, Keys own) {
        Keys keys = place;
        for (var entry : own.values().entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        return keys.has("charge") || keys.has("rest_V") ? keys : keys.with("charge", 1);
    }

    private String line(List<Keys> cells, int rows, int side, Outfit outfit) {
        String layout =
                rows == 1 && side == 1 ? "1s" : rows == 1 ? side + "p" : rows + "s" + (side > 1 ? side + "p" : "");
        StringBuilder line = new StringBuilder(layout)
                .append(' ')
                .append(cells.get(0).text("model").orElse(STAND_IN));
        if (wish.regulated()) {
            line.append("; board ").append(number(wish.watts().getAsDouble())).append(" W cut-off ");
            line.append(number(rows * spec(cells.get(0)).cutoffV())).append(" V");
        }
        line.append("; coil ").append(number(outfit.coilOhm()));
        outfit.fuseA()
                .ifPresent(
                        rating -> line.append("; fuse ").append(number(rating)).append(" A"));
        line.append("; wire ")
                .append(outfit.awg())
                .append("awg ")
                .append(LENGTH_MM)
                .append("mm");
        return line.toString();
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(9))
                .stripTrailingZeros()
                .toPlainString();
    }
}
