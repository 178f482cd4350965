package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.NearMiss;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** What an author probably meant by a name that a bench does not have. */
final class Meant {

    /** Every quantity that some part, joint, pack or run has. */
    private static final List<String> QUANTITIES = List.of(
            "rest_V",
            "terminal_V",
            "sag_V",
            "current_A",
            "limit_A",
            "load_fraction",
            "internal_ohm",
            "heat_W",
            "ohm",
            "volts_V",
            "power_W",
            "temperature_C",
            "drop_V",
            "given_W",
            "delivered_W",
            "cell_heat_W",
            "path_heat_W",
            "charging_W",
            "board_heat_W",
            "supply_heat_W",
            "efficiency",
            "time_s",
            "energy_Wh",
            "charge",
            "given_Ah",
            "peak_C");

    private Meant() {}

    /** Parts and joints of a bench, and what else has readings. */
    static List<String> things(Scenario bench) {
        List<String> things = new ArrayList<>(List.of("pack", "probes"));
        bench.parts().stream().map(Part::id).forEach(things::add);
        bench.links().stream().flatMap(link -> link.id().stream()).forEach(things::add);
        return things;
    }

    /** The reading that is nearest to one that cannot be taken; empty where none is near. */
    static Optional<String> reading(ReadingRef ref, Situation situation) {
        List<String> parts = things(situation.scenario());
        String part = near(ref.part(), parts);
        String quantity = near(ref.quantity(), QUANTITIES);
        ReadingRef meant = new ReadingRef(ref.bench(), ref.when(), part, quantity);
        return !meant.equals(ref) && situation.read(meant).isPresent()
                ? Optional.of(meant.toString())
                : Optional.empty();
    }

    private static String near(String word, List<String> known) {
        return known.contains(word)
                ? word
                : NearMiss.of(word, known).stream().findFirst().orElse(word);
    }

    /** The part or joint that is nearest to a name. */
    static Optional<String> thing(String word, Scenario bench) {
        return NearMiss.of(word, things(bench)).stream().findFirst();
    }
}
