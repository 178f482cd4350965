package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;
import org.sagwise.report.post.Block;
import org.sagwise.run.UsualRun;
import org.sagwise.scenario.Part;

/** The same numbers of two benches in the same order, as built and corrected. */
final class BeforeAfter {

    private static final double NO_CURRENT_A = 1e-3;

    private final Speech speech;
    private final Assessment before;
    private final Assessment after;
    private final List<List<String>> rows = new ArrayList<>();

    private BeforeAfter(Speech speech, Assessment before, Assessment after) {
        this.speech = speech;
        this.before = before;
        this.after = after;
    }

    static Block.Table table(Speech speech, Assessment before, Assessment after, Optional<Life> lifeBefore) {
        BeforeAfter table = new BeforeAfter(speech, before, after);
        table.write(lifeBefore);
        List<String> heads = List.of("", speech.say("head.as-built"), speech.say("head.as-corrected"));
        return new Block.Table(heads, table.rows);
    }

    private void write(Optional<Life> lifeBefore) {
        rows.add(List.of(speech.say("row.gravest"), gravest(before), gravest(after)));
        boolean hasButton = !before.scenario().partsOf(PartKind.SWITCH).isEmpty();
        List<Part> cells = before.scenario().partsOf(PartKind.CELL);
        if (hasButton && (flows(before) || flows(after))) {
            cells.forEach(cell -> cell("row.cell-rest", cell, a -> a.bench().rest()));
        }
        cells.forEach(cell -> cell(
                hasButton ? "row.cell-held" : "row.cell", cell, a -> a.bench().fired()));
        for (Part coil : before.scenario().partsOf(PartKind.COIL)) {
            rows.add(List.of(speech.say("row.coil", speech.name(coil.id())), watts(before, coil), watts(after, coil)));
        }
        if (lifeBefore.isPresent()) {
            Life.of(after, UsualRun.of(after.bench())).ifPresent(lifeAfter -> life(lifeBefore.get(), lifeAfter));
        }
    }

    private void life(Life one, Life other) {
        rows.add(List.of(speech.say("row.life"), one.duration(speech), other.duration(speech)));
    }

    private static boolean flows(Assessment assessment) {
        return assessment.bench().rest().cells().stream().anyMatch(cell -> Math.abs(cell.currentA()) > NO_CURRENT_A);
    }

    private String gravest(Assessment assessment) {
        return assessment.cautions().isEmpty()
                ? speech.say("row.no-caution")
                : CautionTexts.signal(assessment.cautions().get(0).signal(), speech.locale());
    }

    private void cell(String key, Part cell, Function<Assessment, Readings> moment) {
        rows.add(List.of(
                speech.say(key, speech.name(cell.id())),
                amps(moment.apply(before).cell(cell.id())),
                amps(moment.apply(after).cell(cell.id()))));
    }

    private String amps(Optional<CellReading> cell) {
        return speech.print(cell.map(CellReading::currentA).orElse(Double.NaN), Unit.AMPERE);
    }

    private String watts(Assessment assessment, Part coil) {
        return speech.print(
                assessment
                        .bench()
                        .fired()
                        .coil(coil.id())
                        .map(CoilReading::powerW)
                        .orElse(Double.NaN),
                Unit.WATT);
    }
}
