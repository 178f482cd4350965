package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.LookAhead;
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
    private static final FixRule SOUND = new SoundCell();
    private static final FixRule JOINT = new SoundJoint();
    private static final FixRule FUSE = new SmallerFuse();

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
            Map.entry("ahead-overcharged", List.of(CHARGE)),
            Map.entry("ahead-reversed", List.of(CHARGE)),
            Map.entry("label-claims", List.of(SOUND)),
            Map.entry("cell-deep-discharged", List.of(SOUND)),
            Map.entry("cell-above-full", List.of(SOUND)),
            Map.entry("cell-hot", List.of(SOUND)),
            Map.entry("cell-driven-backwards", List.of(SOUND)),
            Map.entry("cell-below-cutoff", List.of(CHARGE, PART, OHMS, WATTS)),
            Map.entry("joint-hot", List.of(JOINT)),
            Map.entry("board-asks-too-much", List.of(WATTS)),
            Map.entry("fuse-too-large", List.of(FUSE)),
            Map.entry("board-trouble", List.of(WATTS, OHMS)));

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
        for (Caution caution : lookedAt(assessment)) {
            of(assessment, caution).stream()
                    .filter(offer -> results.add(offer.after().scenario()))
                    .forEach(offers::add);
        }
        return List.copyOf(offers);
    }

    /**
     * What may be a step toward a bench without faults, in the order of {@link FixKind}: its caution is gone, whatever
     * else is known may still be there, and nothing new is graver. Steps that bring something as grave come last: thick
     * wires let more current through, and then the coil wants more ohms.
     */
    static List<Offer> steps(Assessment assessment) {
        List<Offer> steps = lookedAt(assessment).stream()
                .flatMap(caution -> proposed(assessment, caution).stream()
                        .map(fix -> offer(assessment, caution, fix))
                        .filter(offer -> isStep(assessment.cautions(), offer, 1)))
                .toList();
        return steps.stream()
                .sorted(Comparator.comparing((Offer offer) -> !isStep(assessment.cautions(), offer, 0))
                        .thenComparing(offer -> offer.fix().kind()))
                .toList();
    }

    private static List<Caution> lookedAt(Assessment assessment) {
        List<Caution> cautions = assessment.cautions();
        return cautions.subList(0, Math.min(MOST_CAUTIONS, cautions.size()));
    }

    /** The cures of one caution that hold. */
    public static List<Offer> of(Assessment assessment, Caution caution) {
        return proposed(assessment, caution).stream()
                .map(fix -> offer(assessment, caution, fix))
                .filter(offer ->
                        isCured(assessment.cautions(), caution, offer.after().cautions()))
                .toList();
    }

    private static List<Fix> proposed(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        if (scenario.parts().size() > MOST_PARTS || scenario.links().size() > MOST_LINKS) {
            return List.of();
        }
        return RULES.getOrDefault(caution.id(), List.of()).stream()
                .flatMap(rule -> rule.fixes(assessment, caution).stream())
                .toList();
    }

    private static Offer offer(Assessment before, Caution caution, Fix fix) {
        Assessment after =
                Assessment.of(fix.apply(before.scenario()), before.bench().catalogue());
        return new Offer(caution, fix, LookAhead.atS(caution).isPresent() ? after.lookingAhead() : after);
    }

    /**
     * @param asGrave 1 to let pass what is new and as grave, 0 not to
     */
    private static boolean isStep(List<Caution> before, Offer offer, int asGrave) {
        return offer.after().cautions().stream().noneMatch(left -> {
            boolean known = before.stream().anyMatch(old -> isSame(old, left) && old.signal() == left.signal());
            int milder = left.signal().compareTo(offer.caution().signal());
            return isSame(offer.caution(), left) || !known && milder + asGrave <= 0;
        });
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
