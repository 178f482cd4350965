package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;

/** The parts of a bench in words; parts that are alike share a sentence. */
final class PartWords {

    private static final double ALIKE_C = 0.5;

    private final Speech speech;
    private final Bench bench;

    private PartWords(Speech speech, Bench bench) {
        this.speech = speech;
        this.bench = bench;
    }

    static List<String> of(Speech speech, Bench bench) {
        PartWords words = new PartWords(speech, bench);
        Map<String, List<Part>> alike = new LinkedHashMap<>();
        for (Part part : bench.scenario().parts()) {
            alike.computeIfAbsent(words.description(part), key -> new ArrayList<>())
                    .add(part);
        }
        List<String> items = new ArrayList<>();
        alike.forEach((description, parts) -> {
            String key = parts.size() > 1 ? "part.each" : "part.one";
            items.add(speech.sentence(speech.say(key, speech.names(parts), description)) + words.notes(parts));
        });
        return items;
    }

    private String description(Part part) {
        List<String> words = new ArrayList<>();
        switch (part.kind()) {
            case CELL -> cell(bench.cells().get(part.id()), words);
            case COIL -> coil(part, words);
            case SWITCH -> button(part, words);
            case FUSE -> fuse(part, words);
            case PTC ->
                words.add(speech.say("ptc", number(part, "hold_A", Unit.AMPERE), number(part, "trip_A", Unit.AMPERE)));
            case REVERSE_GUARD ->
                words.add(speech.say(
                        "guard." + values(part).word("type").orElseThrow(),
                        speech.milliohms(values(part).need("mohm")),
                        number(part, "rating_A", Unit.AMPERE),
                        number(part, "drop_V", Unit.VOLT)));
            case METER ->
                words.add(speech.say("meter." + part.meterMode().orElseThrow().word()));
            case BOARD -> words.add(speech.say("board", number(part, "power_W", Unit.WATT)));
            case CHARGER ->
                words.add(speech.say(
                        "charger", number(part, "current_A", Unit.AMPERE), number(part, "limit_V", Unit.VOLT)));
            case SUPPLY ->
                words.add(
                        speech.say("supply", number(part, "volts", Unit.VOLT), number(part, "internal_ohm", Unit.OHM)));
            case RESISTOR -> words.add(speech.say("resistor", number(part, "ohm", Unit.OHM)));
        }
        part.model().ifPresent(model -> words.add(speech.say("part.model", model)));
        return String.join("; ", words);
    }

    /** What was noted about parts that are otherwise alike; of several, about which. */
    private String notes(List<Part> parts) {
        StringBuilder notes = new StringBuilder();
        for (Part part : parts) {
            for (Note note : bench.scenario().notes()) {
                if (note.on().equals(part.id())) {
                    notes.append("; ")
                            .append(
                                    parts.size() == 1
                                            ? speech.say("part.note", speech.note(note))
                                            : speech.say("part.note-on", speech.name(part.id()), speech.note(note)));
                }
            }
        }
        return notes.toString();
    }

    private void cell(ResolvedCell cell, List<String> words) {
        CellSpec spec = cell.spec();
        words.add(speech.say(
                "cell",
                spec.format().trade(),
                spec.chemistry().name(),
                speech.print(spec.capacityAh(), Unit.AMPERE_HOUR),
                Double.isNaN(spec.limitA()) ? speech.say("cell.no-limit") : speech.print(spec.limitA(), Unit.AMPERE),
                speech.print(cell.ohmAt(cell.start()), Unit.OHM)));
        words.add(speech.say("cell.rest", speech.print(cell.start().restV(), Unit.VOLT)));
        if (cell.health() < 1) {
            words.add(speech.say("cell.worn", speech.print(cell.health(), Unit.FRACTION)));
        }
        if (cell.isTorn()) {
            words.add(speech.say("cell.torn"));
        }
        spec.guard().ifPresent(guard -> words.add(speech.say("cell.guard", speech.print(guard.tripA(), Unit.AMPERE))));
        spec.claim().ifPresent(claim -> {
            claim.limitA().ifPresent(amps -> claim(amps, Unit.AMPERE, words));
            claim.capacityAh().ifPresent(hours -> claim(hours, Unit.AMPERE_HOUR, words));
        });
        double temperatureC = cell.start().temperatureC();
        if (Math.abs(temperatureC - bench.scenario().ambientC()) > ALIKE_C) {
            words.add(speech.say("cell.at", speech.print(temperatureC, Unit.CELSIUS)));
        }
    }

    private void claim(double value, Unit unit, List<String> words) {
        words.add(speech.say("cell.claim", speech.print(value, unit)));
    }

    private void coil(Part part, List<String> words) {
        CoilSpec coil = bench.coils().get(part.id()).spec();
        words.add(speech.say("coil", speech.print(coil.ohm(), Unit.OHM)));
        values(part)
                .group("wire")
                .ifPresent(wire -> words.add(speech.say(
                        "coil.wire",
                        wire.text("alloy").orElse(""),
                        wire.number("wraps", 0),
                        speech.millimetres(wire.number("inner_mm", 0)))));
        coil.limitW().ifPresent(watts -> words.add(speech.say("coil.limit", speech.print(watts, Unit.WATT))));
    }

    private void button(Part part, List<String> words) {
        EffectiveKeys button = values(part);
        words.add(speech.say(
                "switch." + button.word("type").orElseThrow(), speech.milliohms(button.need("closed_mohm"))));
        button.word("stuck").ifPresent(how -> words.add(speech.say("switch.stuck-" + how)));
    }

    private void fuse(Part part, List<String> words) {
        words.add(speech.say("fuse", number(part, "rating_A", Unit.AMPERE)));
        if (values(part).flag("blown")) {
            words.add(speech.say("fuse.blown"));
        }
    }

    private EffectiveKeys values(Part part) {
        return bench.values(part.id());
    }

    private String number(Part part, String key, Unit unit) {
        return speech.print(values(part).need(key), unit);
    }
}
