package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.file.ShareText;
import org.sagwise.plan.Estimate;
import org.sagwise.plan.Measured;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/** What follows from readings, for people. */
final class MeasuredText {

    private final CallContext call;
    private final Texts texts;
    private final QuantityFormat format;
    private final MeasuredReport report;

    MeasuredText(CallContext call, MeasuredReport report) {
        this.call = call;
        this.texts = call.texts();
        this.format = call.format();
        this.report = report;
    }

    List<String> lines() {
        Measured measured = report.measured();
        Texts plan = Texts.in("plan", call.locale());
        TextTable table = new TextTable(TextTable.Side.LEFT, TextTable.Side.RIGHT, TextTable.Side.LEFT);
        row(table, "sag", format.print(measured.sagV(), Unit.VOLT), "");
        row(table, "drop", format.print(measured.dropV(), Unit.VOLT), "");
        estimate(table, "current", measured.currentA(), Unit.AMPERE);
        row(table, "power", format.print(measured.powerW(), Unit.WATT), "");
        estimate(table, "internal", measured.internalOhm(), Unit.OHM);
        estimate(table, "path", measured.pathOhm(), Unit.OHM);
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        paragraph(
                lines,
                texts.say(
                        "measured.spread",
                        format.print(measured.check().voltsStep(), Unit.VOLT),
                        format.print(measured.check().ohmStep(), Unit.OHM)));
        paragraph(lines, plan.say("advice." + Words.of(measured.advice())) + " " + plan.say("advice.always"));
        if (report.isCellAssumed()) {
            paragraph(lines, texts.say("measured.assumed"));
        }
        ShareText.of(report.scenario()).ifPresent(text -> {
            lines.add(texts.say("measured.share"));
            lines.add(text);
            lines.add("");
        });
        lines.addAll(Paragraph.lines(texts.say("teaching"), ""));
        return lines;
    }

    private static void paragraph(List<String> lines, String text) {
        lines.addAll(Paragraph.lines(text, ""));
        lines.add("");
    }

    private void estimate(TextTable table, String key, Estimate estimate, Unit unit) {
        String shown = "± " + format.print(estimate.expanded(), unit);
        row(table, key, format.print(estimate.value(), unit), shown);
    }

    private void row(TextTable table, String key, String value, String spread) {
        table.row(call.printable(texts.say("measured." + key)), value, call.printable(spread));
    }
}
