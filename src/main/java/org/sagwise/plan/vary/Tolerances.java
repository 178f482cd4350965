package org.sagwise.plan.vary;

import java.util.Map;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.plan.vary.Tolerance.Shape;
import org.sagwise.run.Basis;
import org.sagwise.scenario.Scenario;

/** What numbers of parts commonly are off by; docs/model-notes.md says where each is from. */
final class Tolerances {

    private static final Tolerance INTERNAL = typical(Shape.SHARE, 0.15);
    private static final Tolerance CONTACT = new Tolerance(Shape.FACTOR, 2, Basis.TEACHING);

    /** A resistance wire's ohms per length lie within 5 %: the table of {@link org.sagwise.part.WireTolerance}. */
    private static final Tolerance WIRE = new Tolerance(Shape.SHARE, 0.05, Basis.PUBLISHED);

    private static final Map<String, Tolerance> ROWS = Map.ofEntries(
            Map.entry("cell.internal_mohm", INTERNAL),
            Map.entry("cell.capacity_mAh", typical(Shape.SHARE, 0.03)),
            Map.entry("cell.charge", new Tolerance(Shape.DISTANCE, 0.02, Basis.TEACHING)),
            Map.entry("cell.rest_V", new Tolerance(Shape.DISTANCE, 0.02, Basis.TEACHING)),
            Map.entry("coil.ohm", WIRE),
            Map.entry("coil.wire.wraps", WIRE),
            Map.entry("switch.closed_mohm", typical(Shape.FACTOR, 1.5)),
            Map.entry("fuse.mohm", typical(Shape.SHARE, 0.15)),
            Map.entry("ptc.mohm", typical(Shape.FACTOR, 1.4)),
            // The series E24 goes with 5 %: IEC 60063:2015.
            Map.entry("resistor.ohm", new Tolerance(Shape.SHARE, 0.05, Basis.PUBLISHED)),
            Map.entry("supply.volts", typical(Shape.SHARE, 0.01)),
            Map.entry("meter.shunt_mohm", typical(Shape.SHARE, 0.01)),
            Map.entry("link.contact_mohm", CONTACT),
            Map.entry("link.jumper.contacts_mohm", CONTACT),
            Map.entry("link.jumper.length_mm", new Tolerance(Shape.SHARE, 0.05, Basis.TEACHING)));

    private Tolerances() {}

    private static Tolerance typical(Shape shape, double within) {
        return new Tolerance(shape, within, Basis.TYPICAL);
    }

    /** What a number of a bench is commonly off by; empty where it is taken as printed. */
    static Optional<Tolerance> of(Scenario scenario, Variable variable) {
        String kind = scenario.part(variable.owner())
                .map(part -> part.kind())
                .map(PartKind::word)
                .orElse(variable.owner().isEmpty() ? "" : "link");
        String group = variable.group().isEmpty() ? "" : variable.group() + ".";
        return Optional.ofNullable(ROWS.get(kind + "." + group + variable.key()));
    }
}
