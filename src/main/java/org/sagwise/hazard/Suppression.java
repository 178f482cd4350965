package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Leaves out what only follows from something graver: a reversed pair is over its limit, below its
 * cut-off and much else besides, and a reader needs to be told to turn the cell.
 */
final class Suppression {

    /** How close a consequence must lie to its cause. */
    private enum Reach {
        /** It concerns a part or a link that the cause concerns. */
        SAME_PARTS,
        /** It concerns a part that the cause concerns, and shows in the same position. */
        SAME_PARTS_AND_MOMENT,
        /** It concerns a part that is joined, however far off, to one that the cause concerns. */
        SAME_ISLAND
    }

    private record Entry(Set<String> causes, Signal atLeast, Reach reach, Set<String> effects) {}

    /** Whatever a current that no load limits brings about. */
    private static final Set<String> OF_A_SHORT = Set.of(
            CellOverLimit.ID,
            CellNearLimit.ID,
            PulseTakenForSteady.ID,
            CellBelowCutoff.ID,
            CellDrivenBackwards.ID,
            CellAboveFull.CHARGED_ID,
            ChargeOverLimit.ID,
            ChargingTemperature.ID,
            UnequalChargeInParallel.ID,
            SupplyChargesCell.ID,
            JumperOverAmpacity.ID,
            JumperOverFusing.ID,
            BoardTrouble.ID,
            OpenCircuit.ID,
            NoAnswer.DISAGREE_ID);

    private static final List<Entry> TABLE = List.of(
            island(
                    Set.of(TornWrapTouching.ID),
                    Signal.DANGER,
                    Set.of(PackShorted.ID, ReversedInParallel.ID, UnequalRows.ID, CoilBypassed.ID)),
            island(Set.of(MeterOnAmps.ID), Signal.WARNING, Set.of(PackShorted.ID, CoilBypassed.ID)),
            parts(Set.of(PackShorted.ID), Signal.WARNING, Set.of(CoilOverLimit.ID)),
            parts(Set.of(CoilBypassed.ID), Signal.WARNING, Set.of(PackShorted.ID)),
            island(Set.of(PackShorted.ID), Signal.WARNING, Set.of(CoilBypassed.ID)),
            island(
                    Set.of(
                            TornWrapTouching.ID,
                            MeterOnAmps.ID,
                            CoilBypassed.ID,
                            PackShorted.ID,
                            ReversedInParallel.ID,
                            UnequalRows.ID),
                    Signal.WARNING,
                    OF_A_SHORT),
            parts(
                    Set.of(ReversedInParallel.ID, UnequalRows.ID),
                    Signal.WARNING,
                    Set.of(
                            MixedChemistry.ID,
                            MixedCapacity.ID,
                            MixedLimit.ID,
                            MixedHealth.ID,
                            MixedResistance.ID,
                            ReversedInSeries.ID,
                            UnequalChargeInSeries.ID)),
            parts(
                    Set.of(ReversedInSeries.ID),
                    Signal.NOTICE,
                    Set.of(
                            CellBelowCutoff.ID,
                            CellDrivenBackwards.ID,
                            CellAboveFull.CHARGED_ID,
                            ChargeOverLimit.ID,
                            UnequalChargeInSeries.ID)),
            island(Set.of(ReversedInSeries.ID), Signal.NOTICE, Set.of(BoardTrouble.ID, OpenCircuit.ID)),
            parts(
                    Set.of(MixedChemistry.ID),
                    Signal.WARNING,
                    Set.of(MixedCapacity.ID, MixedLimit.ID, MixedResistance.ID, UnequalChargeInSeries.ID)),
            parts(Set.of(MixedCapacity.ID), Signal.CAUTION, Set.of(MixedLimit.ID, MixedResistance.ID)),
            parts(Set.of(MixedLimit.ID, MixedHealth.ID), Signal.CAUTION, Set.of(MixedResistance.ID)),
            island(Set.of(CellOverLimit.ID, PulseTakenForSteady.ID), Signal.WARNING, Set.of(CellNearLimit.ID)),
            island(
                    Set.of(ChargerTooHigh.REVERSED_ID),
                    Signal.WARNING,
                    Set.of(CellBelowCutoff.ID, CellDrivenBackwards.ID)),
            parts(
                    Set.of(UnequalChargeInParallel.ID),
                    Signal.WARNING,
                    Set.of(ChargeOverLimit.ID, CellAboveFull.CHARGED_ID, UnequalChargeInSeries.ID)),
            new Entry(
                    Set.of(UnequalChargeInParallel.ID),
                    Signal.WARNING,
                    Reach.SAME_PARTS_AND_MOMENT,
                    Set.of(CellOverLimit.ID, CellNearLimit.ID, PulseTakenForSteady.ID)),
            parts(Set.of(SupplyChargesCell.ID), Signal.WARNING, Set.of(ChargeOverLimit.ID)),
            parts(
                    Set.of(CellDrivenBackwards.ID),
                    Signal.WARNING,
                    Set.of(CellDeeplyDischarged.ID, CellEmpty.ID, UnequalChargeInSeries.ID)),
            parts(
                    Set.of(CellDeeplyDischarged.ID, CellEmpty.ID),
                    Signal.NOTICE,
                    Set.of(CellBelowCutoff.ID, UnequalChargeInSeries.ID)),
            parts(Set.of(ChargingTemperature.ID), Signal.WARNING, Set.of(CellTemperature.COLD_ID)),
            parts(Set.of(ChargerTooHigh.ID), Signal.WARNING, Set.of(CellAboveFull.CHARGED_ID)),
            parts(Set.of(NoAnswer.UNSETTLED_ID), Signal.NOTICE, Set.of(BoardTrouble.ID)),
            island(Set.of(BoardTrouble.ID), Signal.CAUTION, Set.of(CoilBypassed.ID)),
            parts(Set.of(JumperOverFusing.ID), Signal.WARNING, Set.of(JumperOverAmpacity.ID)),
            parts(Set.of(TornWrapTouching.ID), Signal.WARNING, Set.of(TornWrap.ID)));

    private final HazardContext context;
    private final Map<Caution, Set<Integer>> islands = new IdentityHashMap<>();

    Suppression(HazardContext context) {
        this.context = context;
    }

    private static Entry parts(Set<String> causes, Signal atLeast, Set<String> effects) {
        return new Entry(causes, atLeast, Reach.SAME_PARTS, effects);
    }

    private static Entry island(Set<String> causes, Signal atLeast, Set<String> effects) {
        return new Entry(causes, atLeast, Reach.SAME_ISLAND, effects);
    }

    /** The cautions without those that follow from others among them, in the same order. */
    List<Caution> thin(List<Caution> cautions) {
        List<Caution> left = new ArrayList<>(cautions);
        for (Entry entry : TABLE) {
            List<Caution> causes = left.stream()
                    .filter(c -> entry.causes().contains(c.id()))
                    .filter(c -> c.signal().compareTo(entry.atLeast()) <= 0)
                    .toList();
            left.removeIf(effect ->
                    entry.effects().contains(effect.id()) && causes.stream().anyMatch(c -> reaches(entry, c, effect)));
        }
        return left;
    }

    private boolean reaches(Entry entry, Caution cause, Caution effect) {
        if (cause == effect) {
            return false;
        }
        return switch (entry.reach()) {
            case SAME_PARTS -> concernsSame(cause, effect);
            case SAME_PARTS_AND_MOMENT -> cause.when() == effect.when() && concernsSame(cause, effect);
            case SAME_ISLAND -> !Collections.disjoint(islands(cause), islands(effect));
        };
    }

    private static boolean concernsSame(Caution cause, Caution effect) {
        return !Collections.disjoint(cause.parts(), effect.parts())
                || !Collections.disjoint(cause.links(), effect.links());
    }

    private Set<Integer> islands(Caution caution) {
        return islands.computeIfAbsent(caution, key -> {
            Set<Integer> found = new HashSet<>();
            key.parts().forEach(part -> found.add(context.held().island(part)));
            found.remove(-1);
            return found;
        });
    }
}
