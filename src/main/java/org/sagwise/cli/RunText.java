package org.sagwise.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;
import org.sagwise.run.EnergyBook;
import org.sagwise.run.Forecast;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunState;
import org.sagwise.run.RunTexts;
import org.sagwise.text.Texts;

/** What came of a run, for people: what happened and when, a table of cells, events. */
final class RunText {

    /** A cell that falls to its cut-off this soon is not empty: something is wrong. */
    private static final double AT_ONCE_S = 0.5;

    private final CallContext call;
    private final Texts texts;
    private final QuantityFormat format;
    private final RunReport report;
    private final RunTexts words;
    private final RunState last;
    private final List<String> lines = new ArrayList<>();

    private RunText(CallContext call, RunReport report) {
        this.call = call;
        this.report = report;
        texts = call.texts();
        format = call.format();
        words = new RunTexts(report.bench(), format);
        last = report.result().last();
    }

    static List<String> lines(CallContext call, RunReport report) {
        return new RunText(call, report).write();
    }

    private List<String> write() {
        head();
        course();
        cells();
        coils();
        events();
        report.outlooks().forEach(this::outlook);
        if (!report.life().isEmpty()) {
            LifeText.lines(call, report, words).forEach(lines::add);
        }
        if (grave()) {
            paragraph(words.standBack());
        }
        paragraph(texts.say("teaching"));
        return lines;
    }

    private void head() {
        if (!report.bench().scenario().title().isBlank()) {
            lines.add(report.bench().scenario().title());
        }
        lines.addAll(Paragraph.lines(
                texts.say(
                        "run." + manner(),
                        time(report.plan().onS()),
                        time(report.plan().offS()),
                        report.plan().untilS().isPresent()
                                ? time(report.plan().untilS().getAsDouble())
                                : "",
                        format.print(report.bench().scenario().ambientC(), Unit.CELSIUS)),
                ""));
    }

    private String manner() {
        RunPlan plan = report.plan();
        String until = plan.untilS().isPresent() ? "time" : "cutoff";
        if (last.presses() == 0) {
            return "no-button-" + until;
        }
        return (Double.isInfinite(plan.onS()) ? "held-" : "pressed-") + until;
    }

    private String time(double seconds) {
        return format.print(seconds, Unit.SECOND);
    }

    private void course() {
        EnergyBook book = last.energy();
        RunEnd end = report.result().end();
        String ended = texts.say("run.ended", time(last.timeS()), words.end(end));
        String counted = last.presses() == 0 ? "" : " " + texts.say("run.counted", last.presses(), time(last.firedS()));
        String delivered = book.deliveredJ() > 0
                ? " "
                        + texts.say(
                                "run.delivered",
                                format.print(book.deliveredWh(), Unit.WATT_HOUR),
                                format.print(book.givenWh(), Unit.WATT_HOUR),
                                format.print(book.deliveredJ() / book.givenJ(), Unit.FRACTION))
                : "";
        paragraph(ended + counted + delivered);
        if (end == RunEnd.CUTOFF && last.firedS() < AT_ONCE_S) {
            paragraph(texts.say("run.at-once"));
        }
    }

    private void cells() {
        if (last.cells().isEmpty()) {
            return;
        }
        TextTable table = TextTable.headed(call, "cells", "charge", "rest", "lowest", "most", "now", "hottest");
        for (CellMoment cell : last.cells()) {
            table.row(
                    call.printable(words.name(cell.id())),
                    format.print(cell.charge(), Unit.FRACTION),
                    format.print(cell.restV(), Unit.VOLT),
                    format.print(cell.leastV(), Unit.VOLT),
                    format.print(cell.peakA(), Unit.AMPERE) + (isOfAMoment(cell) ? " *" : ""),
                    format.print(cell.temperatureC(), Unit.CELSIUS),
                    format.print(cell.peakC(), Unit.CELSIUS));
        }
        section(table.lines());
        if (last.cells().stream().anyMatch(this::isOfAMoment)) {
            paragraph(texts.say("run.of-a-moment"));
        }
    }

    private boolean isOfAMoment(CellMoment cell) {
        return cell.isPeakOfAMoment(report.bench().cells().get(cell.id()).spec().capacityAh());
    }

    private void coils() {
        for (CoilMoment coil : last.coils()) {
            if (!Double.isNaN(coil.peakC())) {
                String peak = format.print(coil.peakC(), Unit.CELSIUS);
                paragraph(texts.say("run.coil", words.name(coil.id()), peak));
            }
        }
    }

    /** What one line stands for when the same thing happens again and again. */
    private record What(String part, Kind kind) {}

    private void events() {
        Map<What, List<RunEvent>> sorted = new LinkedHashMap<>();
        for (RunEvent event : report.result().events()) {
            sorted.computeIfAbsent(new What(event.part(), event.kind()), what -> new ArrayList<>())
                    .add(event);
        }
        if (sorted.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(texts.say("run.events"));
        lines.addAll(Paragraph.hanging(sorted.values().stream().map(this::event).toList()));
    }

    private Paragraph.Hung event(List<RunEvent> same) {
        String sentence = words.sentence(same.get(0));
        String again = same.size() > 1 ? " " + texts.say("run.again", same.size() - 1) : "";
        return new Paragraph.Hung(time(same.get(0).atS()), sentence + again);
    }

    private void outlook(Forecast outlook) {
        lines.add("");
        String looked = time(outlook.lookedS());
        boolean held = outlook.press().isHeld() && last.presses() > 0;
        boolean hasButton = !report.bench().scenario().partsOf(PartKind.SWITCH).isEmpty();
        String how = held ? "run.if-held" : hasButton ? "run.if-left" : "run.if-alone";
        lines.addAll(Paragraph.lines(texts.say(how, looked), ""));
        lines.addAll(
                Paragraph.hanging(outlook.stages().stream().map(this::stage).toList()));
        lines.addAll(Paragraph.lines(texts.say("run.spread"), ""));
    }

    private Paragraph.Hung stage(Forecast.Stage stage) {
        String text = words.name(stage.part()) + ": " + words.stage(stage.kind()) + ".";
        return new Paragraph.Hung(when(stage), text);
    }

    private String when(Forecast.Stage stage) {
        String earliest = time(stage.earliestS());
        if (Double.isInfinite(stage.latestS())) {
            return texts.say("run.from", earliest);
        }
        return stage.earliestS() == stage.latestS() ? earliest : texts.say("run.band", earliest, time(stage.latestS()));
    }

    private boolean grave() {
        return report.outlooks().stream()
                        .flatMap(forecast -> forecast.stages().stream())
                        .anyMatch(stage -> isGrave(stage.kind()))
                || report.result().events().stream().anyMatch(event -> isGrave(event.kind()));
    }

    private static boolean isGrave(Kind kind) {
        return kind == Kind.VENTED || kind == Kind.INTERRUPTED;
    }

    private void paragraph(String text) {
        lines.add("");
        lines.addAll(Paragraph.lines(text, ""));
    }

    private void section(List<String> section) {
        lines.add("");
        lines.addAll(section);
    }
}
