package org.sagwise.cli;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.cli.TextTable.Side;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.plan.vary.BuildSpread.Percentiles;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.plan.vary.VariedField;
import org.sagwise.report.vary.VaryWords;

/** What varying a bench shows, as text. */
record VaryText(CallContext call, VaryWords words) {

    /** More rows of a ranking than this matter to nobody. */
    private static final int MOST_RANKS = 8;

    private static final double MATTERS = 0.0005;

    void curve(VariedCurve curve, OptionalDouble present, double[] places, List<Percentiles> along) {
        call.result(words.title(curve));
        call.out().println();
        TextTable table = new TextTable(Side.RIGHT, Side.RIGHT);
        table.row(call.printable(words.name(curve.variable())), call.printable(words.name(curve.reading())));
        curve.points()
                .forEach(point -> table.row(print(curve, point.at()), words.print(curve.reading(), point.reading())));
        table.lines().forEach(call.out()::println);
        bands(curve, places, along);
        call.out().println();
        words.sentences(curve, present.orElse(Double.NaN)).forEach(this::paragraph);
        if (curve.cautions().isEmpty()) {
            paragraph(words.word("cautions.none"));
        } else {
            call.result(words.word("cautions"));
            curve.cautions()
                    .forEach(span -> call.result(
                            span.caution().signal(),
                            signal(span.caution()) + "  " + words.span(curve.variable(), span)));
        }
    }

    private String print(VariedCurve curve, double at) {
        return call.printable(curve.variable().print(at, call.format()));
    }

    private void bands(VariedCurve curve, double[] places, List<Percentiles> along) {
        if (along.isEmpty()) {
            return;
        }
        call.out().println();
        TextTable table = new TextTable(Side.RIGHT, Side.RIGHT, Side.RIGHT);
        table.row(call.printable(words.name(curve.variable())), "5 %", "95 %");
        for (int i = 0; i < along.size(); i++) {
            table.row(
                    print(curve, places[i]),
                    words.print(curve.reading(), along.get(i).low()),
                    words.print(curve.reading(), along.get(i).high()));
        }
        call.result(words.word("band"));
        table.lines().forEach(call.out()::println);
        paragraph(words.word("note"));
    }

    /** A row of it has no more columns than a terminal is wide. */
    void field(VariedField field) {
        call.result(words.word("field", words.name(field.reading()), words.name(field.x()), words.name(field.y())));
        call.out().println();
        int step = Math.max(1, (field.xs().length - 1) / 6);
        Side[] sides = new Side[1 + (field.xs().length + step - 1) / step];
        Arrays.fill(sides, Side.RIGHT);
        TextTable table = new TextTable(sides);
        String[] head = new String[sides.length];
        head[0] = "";
        for (int i = 1; i < head.length; i++) {
            head[i] = call.printable(field.x().print(field.xs()[(i - 1) * step], call.format()));
        }
        table.row(head);
        for (int row = field.ys().length - 1; row >= 0; row--) {
            String[] cells = new String[sides.length];
            cells[0] = call.printable(field.y().print(field.ys()[row], call.format()));
            for (int i = 1; i < cells.length; i++) {
                cells[i] = words.print(field.reading(), field.values()[row][(i - 1) * step]);
            }
            table.row(cells);
        }
        table.lines().forEach(call.out()::println);
    }

    void spread(BuildSpread spread) {
        words.sentences(spread).forEach(this::paragraph);
        call.out().println();
        TextTable table = new TextTable(Side.LEFT, Side.RIGHT, Side.LEFT, Side.RIGHT, Side.RIGHT);
        table.row(
                call.printable(words.word("spread.ranking")),
                call.printable(words.word("spread.printed")),
                call.printable(words.word("spread.off")),
                call.printable(words.word("spread.alone")),
                call.printable(words.word("spread.together")));
        spread.ranking().stream()
                .limit(MOST_RANKS)
                .filter(rank -> rank.total() > MATTERS)
                .forEach(rank -> table.row(
                        call.printable(words.name(rank.variable())),
                        call.printable(rank.variable().print(rank.printed(), call.format())),
                        call.printable(words.off(rank)),
                        call.printable(words.share(Math.max(0, rank.first()))),
                        call.printable(words.share(rank.total()))));
        table.lines().forEach(call.out()::println);
        call.out().println();
        if (spread.cautions().isEmpty()) {
            paragraph(words.word("spread.odds.none", spread.judged()));
        } else {
            call.result(words.word("spread.odds"));
            spread.cautions()
                    .forEach(odds -> call.result(
                            odds.caution().signal(),
                            signal(odds.caution()) + "  " + words.odds(odds, spread.judged())));
        }
    }

    private String signal(Caution caution) {
        return CautionTexts.signal(caution.signal(), call.locale());
    }

    private void paragraph(String text) {
        Paragraph.lines(text, "").forEach(call::result);
    }
}
