package org.sagwise.report.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.Ends;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;

/**
 * Which part of one scenario stands for which part of another.
 *
 * @param mates by id in the first scenario; a part without a mate is missing
 */
record Pairing(Map<String, Mate> mates) {

    /** Parts that work the same either way round. */
    Pairing {
        mates = Map.copyOf(mates);
    }

    /**
     * A part of the second scenario.
     *
     * @param part the part
     * @param turned whether its first terminal stands for the second one of the other
     */
    record Mate(Part part, boolean turned) {

        Mate turnedRound() {
            return new Mate(part, !turned);
        }

        /** Whether it makes a difference that it is turned. */
        boolean isReversed() {
            return turned && part.kind().descriptor().ends() == Ends.DIFFERENT;
        }
    }

    Optional<Mate> of(String id) {
        return Optional.ofNullable(mates.get(id));
    }

    Pairing with(String id, Mate mate) {
        Map<String, Mate> changed = new LinkedHashMap<>(mates);
        changed.put(id, mate);
        return new Pairing(changed);
    }

    /** Two parts of the first scenario with their mates exchanged. */
    Pairing exchanged(String one, String other) {
        return with(one, mates.get(other)).with(other, mates.get(one));
    }

    /** What a terminal of the first scenario is called in the second; its own name if unpaired. */
    String terminal(TerminalRef terminal) {
        Mate mate = mates.get(terminal.part());
        if (mate == null) {
            return "?" + terminal;
        }
        List<String> names = mate.part().kind().terminals();
        String name = terminal.terminal();
        if (mate.turned() && names.indexOf(name) < 2) {
            name = names.get(1 - names.indexOf(name));
        }
        return mate.part().terminal(name).toString();
    }
}
