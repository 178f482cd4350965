package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
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
        if (part.kind() == PartKind.CELL) {
            cell(bench.cells().get(part.id()), words);
        } else if (part.kind() == PartKind.COIL) {
            coil(part, words);
        } else {
            told(part, words);
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

    /** The sentence of its kind, and those of the words and flags that it has, as far as there are any. */
    private void told(Part part, List<String> words) {
        EffectiveKeys values = values(part);
        String kind = "told." + part.kind().word();
        Stream<String> further = part.kind().keys().stream().map(spec -> kind + "." + spec.name() + said(spec, values));
        Stream.concat(Stream.of(kind), further)
                .filter(speech::has)
                .map(key -> speech.told(key, values))
                .forEach(words::add);
    }

    private static String said(KeySpec spec, EffectiveKeys values) {
        if (spec.type() instanceof KeySpec.ChoiceType) {
            return "-" + values.word(spec.name()).orElse("");
        }
        return spec.type() instanceof KeySpec.FlagType && values.flag(spec.name()) ? "" : "-";
    }

    private EffectiveKeys values(Part part) {
        return bench.values(part.id());
    }
}
