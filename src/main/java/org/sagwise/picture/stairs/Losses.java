package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Kind;
import org.sagwise.reading.Staircase.Step;

/**
 * What is lost on one way round, in order: from the sum of the rest voltages down to what is left
 * for the load.
 *
 * @param restV sum of rest voltages along the way, V
 * @param entries the losses
 * @param leftV what is left, V
 */
record Losses(double restV, List<Entry> entries, double leftV) {

    private static final Set<Kind> LOSSES =
            EnumSet.of(Kind.SAG, Kind.CONTACT, Kind.WIRE, Kind.SWITCH, Kind.FUSE, Kind.GUARD, Kind.METER);
    private static final Set<Kind> UNFIT = EnumSet.of(Kind.BOARD, Kind.CHARGER);
    private static final double LEAST_V = 0.5e-3;

    /** How far losses were put together. */
    enum Grain {
        /** Each step by itself. */
        STEPS,
        /** All steps of a kind. */
        KINDS,
        /** Sag, joints (contacts and wires), and each kind of part. */
        JOINTS,
        /** Sag, and all that is lost outside the cells. */
        PLACES
    }

    /**
     * Losses of one step, or of several that were put together.
     *
     * @param kind what they stand for; of several kinds the first
     * @param grain how far they were put together
     * @param steps the steps
     * @param lossV how much, V
     */
    record Entry(Kind kind, Grain grain, List<Step> steps, double lossV) {}

    /**
     * Whether losses of a way can be told from what is used: it has a load, and it is one loop, so
     * that they add up. Holds with the button let go too, so that the lens keeps its place.
     */
    static boolean canBeSeen(List<Step> steps) {
        return steps.stream().noneMatch(step -> UNFIT.contains(step.kind()))
                && steps.stream().anyMatch(step -> step.kind().sort() == Staircase.Sort.LOAD);
    }

    /**
     * The losses along the main way; without entries if nothing is lost to speak of, and empty if
     * they cannot be told.
     *
     * @param most how many entries there may be; beyond it they are put together, to two at least
     */
    static Optional<Losses> of(List<Step> steps, int most) {
        List<Entry> single = new ArrayList<>();
        double restV = 0;
        for (Step step : steps) {
            if (LOSSES.contains(step.kind())) {
                single.add(new Entry(step.kind(), Grain.STEPS, List.of(step), -step.riseV()));
            } else if (step.kind() == Kind.CELL || step.kind() == Kind.SUPPLY) {
                restV += step.riseV();
            }
        }
        double lossV = single.stream().mapToDouble(Entry::lossV).sum();
        if (!canBeSeen(steps) || most < 1 || restV <= lossV) {
            return Optional.empty();
        }
        if (lossV < LEAST_V) {
            return Optional.of(new Losses(restV, List.of(), restV));
        }
        List<Entry> entries = single;
        for (Grain grain : Grain.values()) {
            if (entries.size() > most && grain != Grain.STEPS) {
                entries = together(single, grain);
            }
        }
        return Optional.of(new Losses(restV, entries, restV - lossV));
    }

    private static List<Entry> together(List<Entry> single, Grain grain) {
        Map<Kind, Entry> groups = new LinkedHashMap<>();
        for (Entry entry : single) {
            Entry coarse = new Entry(entry.kind(), grain, entry.steps(), entry.lossV());
            groups.merge(group(entry.kind(), grain), coarse, Losses::sum);
        }
        return List.copyOf(groups.values());
    }

    private static Kind group(Kind kind, Grain grain) {
        if (kind == Kind.SAG || grain.compareTo(Grain.JOINTS) < 0) {
            return kind;
        }
        return kind == Kind.CONTACT || grain == Grain.PLACES ? Kind.WIRE : kind;
    }

    private static Entry sum(Entry one, Entry other) {
        List<Step> steps = new ArrayList<>(one.steps());
        steps.addAll(other.steps());
        return new Entry(one.kind(), one.grain(), steps, one.lossV() + other.lossV());
    }
}
