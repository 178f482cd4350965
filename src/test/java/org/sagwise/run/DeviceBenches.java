package org.sagwise.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Random benches with everything that time has a say in: guards, boards, chargers, fuses, wound coils. */
final class DeviceBenches {

    private DeviceBenches() {}

    /** A bench with up to nine parts; the same seed gives the same bench. */
    static Bench of(long seed) {
        Random random = new Random(seed);
        int count = 3 + random.nextInt(7);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(part("p" + i, random));
        }
        List<TerminalRef> terminals =
                parts.stream().flatMap(part -> part.terminals().stream()).toList();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < count + random.nextInt(count + 2); i++) {
            TerminalRef from = terminals.get(random.nextInt(terminals.size()));
            TerminalRef to = terminals.get(random.nextInt(terminals.size()));
            if (!from.equals(to)) {
                links.add(link(from, to, random));
            }
        }
        return Bench.of(Scenario.of("Random " + seed, parts, links), CatalogueLoader.builtIn());
    }

    private static Link link(TerminalRef from, TerminalRef to, Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> Link.ideal(from, to);
            case 1 -> Link.touch(from, to, 20 * random.nextDouble());
            default -> Link.jumper(from, to, 10 + random.nextInt(18), 20 + random.nextInt(200));
        };
    }

    private static Part part(String id, Random random) {
        return switch (random.nextInt(11)) {
            case 0, 1, 2 -> cell(id, random);
            case 3 -> cell(id, random).with("guard", Keys.of("trip_A", 8, "trip_s", 0.02, "mohm", 20));
            case 4 ->
                Part.of(
                        id,
                        PartKind.BOARD,
                        "power_W",
                        5 + 60 * random.nextDouble(),
                        "cutoff_V",
                        2.5 + random.nextDouble(),
                        "max_input_A",
                        5 + 30 * random.nextDouble());
            case 5 ->
                Part.of(
                        id,
                        PartKind.CHARGER,
                        "current_A",
                        0.5 + 4 * random.nextDouble(),
                        "limit_V",
                        random.nextInt(4) == 0 ? 6 : 4.2,
                        "taper_A",
                        random.nextInt(4) == 0 ? 0 : 0.1);
            case 6 -> Part.of(id, PartKind.SWITCH, "closed_mohm", 20 * random.nextDouble());
            case 7 -> Part.of(id, PartKind.FUSE, "rating_A", 10, "mohm", 4);
            case 8 -> Part.of(id, PartKind.PTC, "hold_A", 1 + 4 * random.nextDouble());
            case 9 ->
                Part.of(id, PartKind.REVERSE_GUARD, "rating_A", 10, "type", random.nextBoolean() ? "mosfet" : "diode");
            default ->
                Part.of(
                        id,
                        PartKind.COIL,
                        "wire",
                        Keys.of(
                                "alloy",
                                random.nextBoolean() ? "nickel-200" : "steel-316l",
                                "awg",
                                24 + random.nextInt(8),
                                "wraps",
                                4 + random.nextInt(8),
                                "inner_mm",
                                3,
                                "legs_mm",
                                20));
        };
    }

    private static Part cell(String id, Random random) {
        double mohm = random.nextInt(8) == 0 ? 0 : 5 + 95 * random.nextDouble();
        return Circuits.cell(id, 2.5 + 1.7 * random.nextDouble(), mohm)
                .with("wrap", random.nextInt(4) == 0 ? "torn" : "sound");
    }
}
