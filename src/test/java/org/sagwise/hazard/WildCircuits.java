package org.sagwise.hazard;

import java.util.List;
import java.util.Random;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Random benches with every kind of part, abused cells among them: the same seed, the same bench.
 */
final class WildCircuits {

    private WildCircuits() {}

    static Scenario of(long seed, int most) {
        Random random = new Random(~seed);
        Scenario scenario = RandomCircuits.of(seed, most);
        for (Part part : scenario.partsOf(PartKind.CELL)) {
            scenario = scenario.withPart(part.id(), cell -> abused(cell, random));
        }
        for (Part part : scenario.partsOf(PartKind.SWITCH)) {
            if (random.nextInt(3) == 0) {
                String stuck = random.nextBoolean() ? "open" : "closed";
                scenario = scenario.withPart(part.id(), p -> p.with("stuck", stuck));
            }
        }
        int extras = 1 + random.nextInt(4);
        for (int i = 0; i < extras; i++) {
            scenario = scenario.plus(extra("x" + i, random));
        }
        List<TerminalRef> ends = scenario.parts().stream()
                .flatMap(part -> part.terminals().stream())
                .toList();
        for (int i = 0; i < 4 * extras; i++) {
            TerminalRef from = ends.get(ends.size() - 1 - random.nextInt(Math.min(12, ends.size())));
            TerminalRef to = ends.get(random.nextInt(ends.size()));
            if (!from.equals(to)) {
                scenario = scenario.plus(Link.touch(from, to, 10 * random.nextDouble()));
            }
        }
        return scenario;
    }

    private static Part abused(Part cell, Random random) {
        return switch (random.nextInt(8)) {
            case 0 -> cell.with("rest_V", -1 + 7 * random.nextDouble());
            case 1 -> cell.with("internal_mohm", 0);
            case 2 -> cell.with("guard", Keys.of("trip_A", 8, "trip_s", 0.1, "mohm", 40));
            case 3 -> cell.with("temperature_C", -20 + 140 * random.nextDouble());
            case 4 -> cell.with("chemistry", "IFR").with("capacity_mAh", 1100);
            case 5 -> cell.with("claimed_A", 40).with("claimed_mAh", 9900);
            case 6 -> cell.with("pulse_A", 30).with("pulse_s", 5).with("health", 0.6);
            default -> cell;
        };
    }

    private static Part extra(String id, Random random) {
        return switch (random.nextInt(7)) {
            case 0 ->
                Part.of(
                        id,
                        PartKind.BOARD,
                        "power_W",
                        40 * random.nextDouble() + 0.1,
                        "cutoff_V",
                        3.2,
                        "max_input_A",
                        12,
                        "out_min_V",
                        0.5,
                        "out_max_V",
                        6);
            case 1 -> Part.of(id, PartKind.CHARGER, "current_A", 2, "limit_V", 4.2);
            case 2 -> Part.of(id, PartKind.RESISTOR, "ohm", random.nextBoolean() ? 0 : 2);
            case 3 -> Part.of(id, PartKind.METER, "mode", "ohms");
            case 4 -> Part.of(id, PartKind.PTC, "hold_A", 1 + 9 * random.nextDouble());
            case 5 ->
                Part.of(id, PartKind.REVERSE_GUARD, "rating_A", 10, "type", random.nextBoolean() ? "mosfet" : "diode");
            default -> Part.of(id, PartKind.FUSE, "rating_A", 10, "blown", random.nextBoolean());
        };
    }
}
