package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.Together;

/** Cures that replace, set or charge one part, or join what is loose. */
final class PartSetting {

    private PartSetting() {}

    static List<Fix> soundWrap(Assessment assessment, Caution caution) {
        return change(
                FixKind.SOUND_WRAP, torn(assessment.scenario()), List.of(), part -> SetPartKeys.clear(part, "wrap"));
    }

    static List<Fix> meterVolts(Assessment assessment, Caution caution) {
        return change(
                FixKind.METER_VOLTS,
                concerned(assessment, caution, is(PartKind.METER)),
                List.of(),
                part -> SetPartKeys.set(part, MeterMode.KEY, MeterMode.VOLTS.word()));
    }

    static List<Fix> newSwitch(Assessment assessment, Caution caution) {
        return change(
                FixKind.NEW_SWITCH,
                concerned(assessment, caution, part -> part.keys().has("stuck")),
                List.of(),
                part -> SetPartKeys.clear(part, "stuck"));
    }

    static List<Fix> fullCharge(Assessment assessment, Caution caution) {
        return change(
                FixKind.CHARGE_FULL,
                concerned(assessment, caution, is(PartKind.CELL)),
                List.of(),
                part -> SetPartKeys.set(part, "charge", 1));
    }

    static List<Fix> warmUp(Assessment assessment, Caution caution) {
        return change(
                FixKind.WARM_UP,
                concerned(assessment, caution, part -> part.keys().has("temperature_C")),
                List.of(new Fix.Quantity(assessment.scenario().ambientC(), Unit.CELSIUS)),
                part -> SetPartKeys.clear(part, "temperature_C"));
    }

    static List<Fix> slowerCharge(Assessment assessment, Caution caution) {
        return change(
                FixKind.SLOW_CHARGE,
                assessment.scenario().partsOf(PartKind.CHARGER),
                List.of(new Fix.Quantity(caution.limit(), Unit.AMPERE)),
                part -> SetPartKeys.set(part, "current_A", caution.limit()));
    }

    static List<Fix> lowerCharge(Assessment assessment, Caution caution) {
        return change(
                FixKind.LOWER_CHARGE,
                concerned(assessment, caution, is(PartKind.CHARGER)),
                List.of(new Fix.Quantity(caution.limit(), Unit.VOLT)),
                part -> SetPartKeys.set(part, "limit_V", caution.limit()));
    }

    /** Joins what is loose, or else replaces what has melted or is stuck. */
    static List<Fix> closedCircuit(Assessment assessment, Caution caution) {
        if (caution.details().get("loose") instanceof TerminalName loose
                && caution.details().get("target") instanceof TerminalName target) {
            return List.of(join(loose, target));
        }
        List<Part> melted =
                concerned(assessment, caution, part -> part.keys().flag("blown").orElse(false));
        return melted.isEmpty()
                ? newSwitch(assessment, caution)
                : change(FixKind.NEW_FUSE, melted, List.of(), part -> SetPartKeys.clear(part, "blown"));
    }

    private static Predicate<Part> is(PartKind kind) {
        return part -> part.kind() == kind;
    }

    private static List<Part> torn(Scenario scenario) {
        return scenario.partsOf(PartKind.CELL).stream()
                .filter(part -> part.wordOrDefault("wrap").equals(Optional.of("torn")))
                .toList();
    }

    private static List<Part> concerned(Assessment assessment, Caution caution, Predicate<Part> which) {
        return caution.parts().stream()
                .flatMap(id -> assessment.scenario().part(id).stream())
                .filter(which)
                .toList();
    }

    private static List<Fix> change(FixKind kind, List<Part> parts, List<Object> more, Function<String, Edit> edit) {
        if (parts.isEmpty()) {
            return List.of();
        }
        Set<String> ids = new LinkedHashSet<>(parts.stream().map(Part::id).toList());
        List<Object> words = new ArrayList<>(List.of(parts));
        words.addAll(more);
        return List.of(
                new Fix(kind, words, ids, new Together(ids.stream().map(edit).toList())));
    }

    private static Fix join(TerminalName loose, TerminalName target) {
        return new Fix(FixKind.JOIN, List.of(loose, target), Set.of(), JoinTerminals.ideal(loose.ref(), target.ref()));
    }
}
