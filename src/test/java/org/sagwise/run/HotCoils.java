package org.sagwise.run;

import java.util.List;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Benches with a coil that warms. */
final class HotCoils {

    static final double SUPPLY_V = 1.2;

    private HotCoils() {}

    /** A nickel coil on a supply without inner resistance, the button ideal. */
    static Bench nickelOnSupply() {
        Part supply = Part.of("S", PartKind.SUPPLY, "volts", SUPPLY_V, "internal_ohm", 0);
        Scenario scenario = Scenario.of(
                "Nickel",
                List.of(supply, Circuits.button(0), nickel()),
                List.of(
                        Circuits.ideal("S.+", "fire.1"),
                        Circuits.ideal("fire.2", "coil.1"),
                        Circuits.ideal("coil.2", "S.-")));
        return Bench.of(scenario, CatalogueLoader.builtIn());
    }

    /** A nickel coil on a cell. */
    static Bench nickelOnCell(Part cell) {
        return onCell(cell, nickel());
    }

    /** A coil of stainless steel on a cell. */
    static Bench steelOnCell(Part cell) {
        return onCell(cell, wound("steel-316l", 8));
    }

    private static Bench onCell(Part cell, Part coil) {
        Scenario ring = Circuits.single(cell, 1);
        return Bench.of(ring.withParts(List.of(cell, Circuits.button(3), coil)), CatalogueLoader.builtIn());
    }

    private static Part nickel() {
        return wound("nickel-200", 10);
    }

    private static Part wound(String alloy, int wraps) {
        return Part.of(
                "coil",
                PartKind.COIL,
                "wire",
                Keys.of("alloy", alloy, "awg", 26, "wraps", wraps, "inner_mm", 3, "legs_mm", 20));
    }
}
