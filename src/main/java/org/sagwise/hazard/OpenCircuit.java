package org.sagwise.hazard;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.MissingJoint;
import org.sagwise.circuit.MissingJoints;
import org.sagwise.circuit.Netlist;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/**
 * Nothing flows through a load although the button is held, because a joint is missing or a part
 * lets nothing through.
 */
final class OpenCircuit implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        SwitchView held = context.held();
        Netlist circuit = held.circuit();
        if (circuit.sources().isEmpty() || circuit.loads().stream().noneMatch(load -> isIdle(held, load))) {
            return List.of();
        }
        Set<TerminalRef> linked = new HashSet<>();
        for (Link link : context.bench().scenario().links()) {
            linked.add(link.from());
            linked.add(link.to());
        }
        return MissingJoints.in(circuit, load -> isIdle(held, load), linked::contains, held.readings()::potentialV)
                .stream()
                .filter(missing -> isOfInterest(context, missing))
                .map(missing -> caution(context, missing))
                .toList();
    }

    private static boolean isIdle(SwitchView held, Branch load) {
        return Math.abs(held.currentA(load.part())) < SwitchView.NO_CURRENT_A;
    }

    /** A resistor alone is of interest only where nothing else is there to be driven. */
    private static boolean isOfInterest(HazardContext context, MissingJoint missing) {
        return missing.loads().stream().anyMatch(id -> context.part(id).kind() != PartKind.RESISTOR)
                || context.held().circuit().loads().stream()
                        .allMatch(load -> context.part(load.part()).kind() == PartKind.RESISTOR);
    }

    private static CautionBuilder caution(HazardContext context, MissingJoint missing) {
        CautionBuilder caution = new CautionBuilder(context, Signal.NOTICE)
                .when(Caution.When.FIRED)
                .parts(missing.loads())
                .parts(missing.blockers())
                .names("loads", missing.loads())
                .names("blockers", missing.blockers());
        missing.loose().ifPresent(end -> caution.parts(end.part()).terminal("loose", end));
        missing.target().ifPresent(end -> caution.parts(end.part()).terminal("target", end));
        return caution.variant(variant(context, missing));
    }

    /**
     * Blockers of one kind have words of their own: {@code fuse}, {@code switch}, {@code meter}.
     */
    private static String variant(HazardContext context, MissingJoint missing) {
        if (missing.blockers().isEmpty()) {
            if (missing.loose().isPresent() && missing.target().isPresent()) {
                return "joint";
            }
            return missing.driven() ? "gap" : "apart";
        }
        List<String> kinds = missing.blockers().stream()
                .map(id -> context.part(id).kind().word())
                .distinct()
                .toList();
        return kinds.size() == 1 ? kinds.get(0) : "blocked";
    }
}
