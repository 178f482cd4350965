package org.sagwise.ui.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.part.PartKind;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.NoteTarget;

/** Says in words what a part, a terminal or a link is and what could be measured at it now. */
public final class PartTexts {

    private final Wording wording;

    public PartTexts(Wording wording) {
        this.wording = wording;
    }

    /** Everything that is picked out, one text each: parts, links, notes. */
    public List<String> lit(Assessment assessment, Selection lit) {
        Stream<String> parts = assessment.scenario().parts().stream()
                .filter(part -> lit.parts().contains(part.id()))
                .map(part -> part(assessment, part));
        Stream<String> links = lit.links().stream().sorted().flatMap(index -> link(assessment, index).stream());
        Stream<String> notes = lit.notes().stream().sorted().flatMap(at -> note(assessment, at).stream());
        return Stream.of(parts, links, notes).flatMap(each -> each).toList();
    }

    /** What a note is on and what it says, in one line; empty if there is none in this place. */
    public Optional<String> note(Assessment assessment, int index) {
        Scenario scenario = assessment.scenario();
        return NoteTarget.of(scenario, index)
                .map(target -> wording.say(
                        "touch.note",
                        noted(scenario, target),
                        scenario.notes().get(index).text().replaceAll("\\s+", " ")));
    }

    /** What people call the part or joint that a note is on. */
    public String noted(Scenario scenario, NoteTarget target) {
        return Names.in(wording.locale()).word(target.name(scenario));
    }

    /** The part with its readings. */
    public String part(Assessment assessment, Part part) {
        return assessment.isVeiled() ? wording.say("touch.asked", called(part)) : told(assessment, part);
    }

    private String told(Assessment assessment, Part part) {
        return part.kind() == PartKind.CELL
                ? assessment
                        .readings()
                        .cell(part.id())
                        .map(cell -> cell(part, cell))
                        .orElse(called(part))
                : part.kind() == PartKind.COIL
                        ? assessment
                                .readings()
                                .coil(part.id())
                                .map(coil -> coil(part, coil))
                                .orElse(called(part))
                        : assessment
                                .readings()
                                .part(part.id())
                                .map(other -> other(part, other))
                                .orElse(called(part));
    }

    /** The terminal with its potential. */
    public String terminal(Assessment assessment, TerminalRef terminal) {
        double volts = assessment.readings().potentialV(terminal);
        String name = Names.capital(end(assessment, terminal), wording.locale());
        if (assessment.isVeiled()) {
            return wording.say("touch.asked", name);
        }
        return Double.isNaN(volts)
                ? wording.say("touch.terminal.air", name)
                : wording.say(
                        "touch.terminal",
                        name,
                        volts(volts - PotentialScale.of(assessment.readings()).lowV()));
    }

    /** The link with its readings; empty if there is none in this place. */
    private Optional<String> link(Assessment assessment, int index) {
        return assessment.readings().links().stream()
                .filter(link -> link.index() == index)
                .findFirst()
                .map(link -> link(assessment, link));
    }

    /** Both ends of a link. */
    public String ends(Assessment assessment, LinkReading link) {
        return Names.capital(
                wording.say("touch.ends", end(assessment, link.from()), end(assessment, link.to())), wording.locale());
    }

    /** What kind of joint a link is. */
    public String joint(Link link) {
        Joint joint = link.joint();
        return wording.say(
                joint instanceof Joint.Jumper
                        ? "joint.jumper"
                        : joint instanceof Joint.Touch ? "joint.touch" : "joint.ideal");
    }

    /** What kind of part it is. */
    public String kind(PartKind kind) {
        return wording.say("kind." + kind.word());
    }

    /** Kind and name, without saying anything twice: "Cell A", but "Old cell" and "Coil". */
    public String called(Part part) {
        String kind = kind(part.kind());
        String name = Names.in(wording.locale()).label(part);
        boolean inName = name.toLowerCase(wording.locale()).contains(kind.toLowerCase(wording.locale()));
        String called = inName ? name : wording.say("touch.called", kind, name);
        return Names.capital(called, wording.locale());
    }

    /** In what state a part is, for people. */
    public String state(PartReading reading) {
        return wording.say("state." + reading.stateKey());
    }

    private String cell(Part part, CellReading cell) {
        boolean pushed = cell.currentA() < 0;
        return wording.say(
                pushed ? "touch.cell.charging" : "touch.cell",
                called(part),
                volts(cell.restV()),
                volts(cell.terminalV()),
                volts(Math.abs(cell.sagV())),
                amps(Math.abs(cell.currentA())),
                wording.limit(cell.limitA(), Unit.AMPERE),
                watts(cell.heatW()));
    }

    private String coil(Part part, CoilReading coil) {
        return wording.say(
                Double.isNaN(coil.temperatureC()) ? "touch.coil.plain" : "touch.coil",
                called(part),
                wording.quantity(coil.ohm(), Unit.OHM),
                volts(Math.abs(coil.voltsV())),
                amps(Math.abs(coil.currentA())),
                watts(coil.powerW()),
                wording.quantity(coil.temperatureC(), Unit.CELSIUS));
    }

    private String other(Part part, PartReading reading) {
        return wording.say(
                "touch.part",
                called(part),
                state(reading),
                volts(Math.abs(reading.voltsV())),
                amps(Math.abs(reading.currentA())));
    }

    private String link(Assessment assessment, LinkReading link) {
        if (assessment.isVeiled()) {
            return wording.say("touch.asked", ends(assessment, link));
        }
        return wording.say(
                "touch.link",
                ends(assessment, link),
                wording.quantity(link.ohm(), Unit.OHM),
                amps(Math.abs(link.currentA())),
                volts(Math.abs(link.dropV())),
                watts(link.heatW()));
    }

    private String end(Assessment assessment, TerminalRef terminal) {
        return end(assessment.scenario(), terminal);
    }

    /** What people call a terminal. */
    public String end(Scenario scenario, TerminalRef terminal) {
        return Names.in(wording.locale()).terminal(scenario, terminal);
    }

    private String volts(double value) {
        return wording.quantity(value, Unit.VOLT);
    }

    private String amps(double value) {
        return wording.quantity(value, Unit.AMPERE);
    }

    private String watts(double value) {
        return wording.quantity(value, Unit.WATT);
    }
}
