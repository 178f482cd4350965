package org.sagwise.ui.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;

/**
 * Something that a cure would change.
 *
 * @param what changes
 * @param was how it is
 * @param is how it would be
 */
record CureChange(String what, String was, String is) {

    /** What a person would ask first: cautions, the worst cell, the coil, the notes. */
    static List<CureChange> of(Assessment before, Offer offer, Wording wording) {
        List<CureChange> changes = new ArrayList<>();
        Assessment after = offer.after();
        changes.add(new CureChange(
                wording.say("cure.cautions"),
                cautions(before.cautions(), wording),
                cautions(after.cautions(), wording)));
        worstCell(before, offer.caution())
                .map(cell -> amps(cell, before, offer, wording))
                .ifPresent(changes::add);
        for (Part coil : before.scenario().partsOf(PartKind.COIL)) {
            changes.add(new CureChange(
                    new PartTexts(wording).called(coil), watts(before, coil, wording), watts(after, coil, wording)));
        }
        List<Part> spent = Hazards.spentCells(before.scenario(), List.of(offer.caution()));
        if (!spent.isEmpty()) {
            changes.add(new CureChange(
                    wording.say("cure.spent", Names.in(wording.locale()).parts(spent)),
                    wording.say("cure.spent.was"),
                    wording.say("cure.spent.is")));
        }
        if (offer.takesNotesAway()) {
            changes.add(new CureChange(
                    wording.say("cure.notes"), wording.say("cure.notes.was"), wording.say("cure.notes.is")));
        }
        return changes.stream().filter(change -> !change.was.equals(change.is)).toList();
    }

    private static String cautions(List<Caution> cautions, Wording wording) {
        return cautions.isEmpty()
                ? wording.say("cure.no-caution")
                : wording.say(
                        "cure.some-cautions",
                        CautionTexts.signal(cautions.get(0).signal(), wording.locale()),
                        cautions.size(),
                        cautions.size() - 1);
    }

    /** Of the cells that a caution is about, the one with the largest current for its limit. */
    private static Optional<CellReading> worstCell(Assessment before, Caution caution) {
        List<CellReading> cells = moment(before, caution).cells();
        List<CellReading> meant = cells.stream()
                .filter(cell -> caution.parts().contains(cell.id()))
                .toList();
        return (meant.isEmpty() ? cells : meant)
                .stream().max(Comparator.comparingDouble(cell -> Math.abs(cell.currentA()) / cell.limitA()));
    }

    private static CureChange amps(CellReading cell, Assessment before, Offer offer, Wording wording) {
        boolean atRest = offer.caution().when() == Caution.When.AT_REST;
        String name = before.scenario()
                .part(cell.id())
                .map(new PartTexts(wording)::called)
                .orElseGet(cell::id);
        double after = moment(offer.after(), offer.caution())
                .cell(cell.id())
                .map(CellReading::currentA)
                .orElse(Double.NaN);
        return new CureChange(
                wording.say(atRest ? "cure.cell-rest" : "cure.cell", name),
                wording.quantity(Math.abs(cell.currentA()), Unit.AMPERE),
                wording.quantity(Math.abs(after), Unit.AMPERE));
    }

    private static Readings moment(Assessment assessment, Caution caution) {
        return caution.when() == Caution.When.AT_REST
                ? assessment.bench().rest()
                : assessment.bench().fired();
    }

    private static String watts(Assessment assessment, Part coil, Wording wording) {
        double powerW = assessment
                .bench()
                .fired()
                .coil(coil.id())
                .map(CoilReading::powerW)
                .orElse(Double.NaN);
        return wording.quantity(powerW, Unit.WATT);
    }

    /** As one line. */
    String line(Wording wording) {
        return wording.say("cure.line", what, was, is);
    }
}
