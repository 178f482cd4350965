package org.sagwise.cli;

import org.sagwise.cli.TextTable.Side;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PartReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Texts;

/**
 * What lies between cells and coils, with what it costs: switches, boards, meters, wires, touches.
 */
final class PathTable {

    private final CallContext call;
    private final Texts texts;
    private final QuantityFormat format;
    private final Scenario scenario;
    private final Names names;
    private final TextTable table = new TextTable(Side.LEFT, Side.LEFT, Side.RIGHT, Side.RIGHT, Side.RIGHT);

    private PathTable(CallContext call, Scenario scenario) {
        this.call = call;
        this.texts = call.texts();
        this.format = call.format();
        this.scenario = scenario;
        this.names = Names.in(call.texts().locale());
    }

    /** The table; without a line where nothing lies on the way but ideal joints. */
    static TextTable of(CallContext call, Scenario scenario, Readings readings) {
        PathTable path = new PathTable(call, scenario);
        readings.parts().stream()
                .filter(part -> part.kind() != PartKind.CELL && part.kind().role() != Role.LOAD)
                .forEach(path::part);
        readings.links().forEach(path::link);
        return path.table;
    }

    private void part(PartReading part) {
        head();
        String kind = texts.say("kind." + part.kind().word());
        String state = part.state() == PartReading.State.WORKING
                ? kind
                : texts.say("kind.in-state", kind, texts.say("state." + Words.of(part.state())));
        String name = scenario.part(part.id()).map(it -> it.name()).orElse(part.id());
        row(name, state, part.currentA(), part.voltsV(), part.powerW());
    }

    /** A link, written in the direction in which the current flows. */
    private void link(LinkReading link) {
        Joint joint = scenario.links().get(link.index()).joint();
        if (joint instanceof Joint.Ideal) {
            return;
        }
        head();
        boolean against = link.currentA() < 0;
        TerminalRef from = against ? link.to() : link.from();
        TerminalRef to = against ? link.from() : link.to();
        double sign = against ? -1 : 1;
        row(
                names.brief(scenario, from) + " › " + names.brief(scenario, to),
                words(joint),
                sign * link.currentA(),
                sign * link.dropV(),
                link.heatW());
    }

    private void head() {
        if (table.isEmpty()) {
            table.row(
                    call.printable(texts.say("head.path")),
                    "",
                    call.printable(texts.say("head.current")),
                    call.printable(texts.say("head.drop")),
                    call.printable(texts.say("head.heat")));
        }
    }

    private void row(String name, String what, double currentA, double voltsV, double powerW) {
        table.row(
                call.printable(name),
                call.printable(what),
                format.print(currentA, Unit.AMPERE),
                format.print(voltsV, Unit.VOLT),
                format.print(powerW, Unit.WATT));
    }

    private String words(Joint joint) {
        if (joint instanceof Joint.Jumper jumper) {
            String wire = texts.say("joint.jumper", width(jumper.width()), length(jumper.lengthMm()));
            return jumper.contactsMohm() > 0
                    ? texts.say("joint.contacts", wire, milliohms(jumper.contactsMohm()))
                    : wire;
        }
        return joint instanceof Joint.Touch touch
                ? texts.say("joint.touch", milliohms(touch.mohm()))
                : texts.say("joint.ideal");
    }

    private String width(Joint.Width width) {
        if (width instanceof Joint.Awg awg) {
            return texts.say("joint.awg", String.valueOf(awg.number()));
        }
        return width instanceof Joint.DiameterMm diameter
                ? length(diameter.mm())
                : format.print(width.size().areaM2(), Unit.SQUARE_METRE);
    }

    private String milliohms(double mohm) {
        return format.print(mohm / 1000, Unit.OHM);
    }

    private String length(double mm) {
        return format.print(mm / 1000, Unit.METRE.scale("mm"), Digits.atMostSignificant(3));
    }
}
