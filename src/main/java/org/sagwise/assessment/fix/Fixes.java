package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.scenario.Scenario;

/** Finds cures for the cautions of a bench, and tries each before it is offered. */
public final class Fixes {

    private static final FixRule TURN = new TurnCells();
    private static final FixRule OHMS = new MoreOhms();
    private static final FixRule WIRE = new ThickerWire();
    private static final FixRule CHARGE = new SameCharge();
    private static final FixRule LIKE = new LikeCell();
    private static final FixRule AWAY = new JointAway();
    private static final FixRule PART = new PartSetting();
    private static final FixRule WATTS = new FewerWatts();

    private static final Map<String, List<FixRule>> RULES = Map.ofEntries(
            Map.entry("reversed-in-parallel", List.of(TURN)),
            Map.entry("reversed-in-series", List.of(TURN)),
            Map.entry("charger-reversed", List.of(TURN)),
            Map.entry("cell-over-limit", List.of(OHMS, WATTS)),
            Map.entry("pulse-as-continuous", List.of(OHMS, WATTS)),
            Map.entry("cell-near-limit", List.of(OHMS, WATTS)),
            Map.entry("coil-over-limit", List.of(OHMS, WATTS)),
            Map.entry("guard-trip", List.of(OHMS, WATTS)),
            Map.entry("fuse-will-open", List.of(OHMS, WATTS)),
            Map.entry("pack-shorted", List.of(AWAY, OHMS)),
            Map.entry("coil-bypassed", List.of(AWAY)),
            Map.entry("joint-on-sound-wrap", List.of(AWAY)),
            Map.entry("jumper-over-ampacity", List.of(WIRE)),
            Map.entry("jumper-over-fusing", List.of(WIRE)),
            Map.entry("unequal-charge-in-parallel", List.of(CHARGE)),
            Map.entry("unequal-charge-in-series", List.of(CHARGE)),
            Map.entry("mixed-chemistry", List.of(LIKE)),
            Map.entry("mixed-capacity", List.of(LIKE)),
            Map.entry("mixed-limit", List.of(LIKE)),
            Map.entry("mixed-health", List.of(LIKE)),
            Map.entry("mixed-resistance", List.of(LIKE)),
            Map.entry("torn-wrap-touching", List.of(PART)),
            Map.entry("torn-wrap", List.of(PART)),
            Map.entry("meter-across-cell", List.of(PART)),
            Map.entry("meter-on-live-circuit", List.of(PART)),
            Map.entry("switch-stuck", List.of(PART)),
            Map.entry("open-circuit", List.of(PART)),
            Map.entry("cell-empty", List.of(PART)),
            Map.entry("cell-cold", List.of(PART)),
            Map.entry("charge-over-limit", List.of(PART)),
            Map.entry("charger-too-high", List.of(PART)),
            Map.entry("board-trouble", List.of(WATTS)));

    /** Benches with more parts are not searched for cures: every cure is tried on all of them. */
    private static final int MOST_PARTS = 200;

    /** Nor are those with more joints, which make a circuit slow to solve. */
    private static final int MOST_LINKS = 400;

    /** So many cautions, the gravest, are looked at for a list of cures. */
    private static final int MOST_CAUTIONS = 12;

    private Fixes() {}

    /**
     * Every cure that holds, for the gravest caution first; most cautions have none or one. One
     * that cures several is offered once.
     */
    public static List<Offer> of(Assessment assessment) {
        List<Offer> offers = new ArrayList<>();
        Set<Scenario> results = new HashSet<>();
        List<Caution> cautions = assessment.cautions();
        for (Caution caution : cautions.subList(0, Math.min(MOST_CAUTIONS, cautions.size()))) {
            of(assessment, caution).stream()
                    .filter(offer -> results.add(offer.after().scenario()))
                    .forEach(offers::add);
        }
        return List.copyOf(offers);
    }

    /** The cures of one caution that hold. */
    public static List<Offer> of(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        if (scenario.parts().size() > MOST_PARTS || scenario.links().size() > MOST_LINKS) {
            return List.of();
        }
        return RULES.getOrDefault(caution.id(), List.of()).stream()
                .flatMap(rule -> rule.fixes(assessment, caution).stream())
                .map(fix -> tried(assessment, caution, fix))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Offer> tried(Assessment before, Caution caution, Fix fix) {
        Scenario scenario = fix.apply(before.scenario());
        Assessment after = Assessment.of(scenario, before.bench().catalogue());
        return isCured(before.cautions(), caution, after.cautions())
                ? Optional.of(new Offer(caution, fix, after))
                : Optional.empty();
    }

    /**
     * Whether a caution is gone, nothing graver is left, and whatever is new is less grave: one who
     * follows an offer must not end up worse, nor believe that all is well.
     */
    static boolean isCured(List<Caution> before, Caution caution, List<Caution> after) {
        for (Caution left : after) {
            Signal signal = left.signal();
            boolean known = before.stream().anyMatch(old -> isSame(old, left));
            boolean graver = signal.compareTo(caution.signal()) < 0;
            boolean newAndAsGrave = !known && signal == caution.signal();
            if (isSame(caution, left) || graver || newAndAsGrave) {
                return false;
            }
        }
        return true;
    }

    static boolean isSame(Caution one, Caution other) {
        boolean bothWhole = one.parts().isEmpty() && other.parts().isEmpty();
        return one.id().equals(other.id()) && (bothWhole || !Collections.disjoint(one.parts(), other.parts()));
    }
}
