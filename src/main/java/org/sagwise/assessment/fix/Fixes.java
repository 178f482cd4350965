package org.sagwise.assessment.fix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Cures;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.LookAhead;
import org.sagwise.hazard.Signal;
import org.sagwise.scenario.Scenario;

/** Finds cures for the cautions of a bench, and tries each before it is offered. */
public final class Fixes {

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
        return Hazards.cures(caution).stream()
                .flatMap(way -> rule(way).fixes(assessment, caution).stream())
                .toList();
    }

    private static FixRule rule(Cures.Way way) {
        return switch (way) {
            case TURN_CELLS -> new TurnCells();
            case TURN_AT_GUARD -> new TurnAtGuard();
            case MORE_OHMS -> new MoreOhms();
            case FEWER_WATTS -> new FewerWatts();
            case JOINT_AWAY -> new JointAway();
            case THICKER_WIRE -> new ThickerWire();
            case SAME_CHARGE -> new SameCharge();
            case LIKE_CELL -> new LikeCell();
            case SOUND_CELL -> new SoundCell();
            case SOUND_JOINT -> new SoundJoint();
            case SMALLER_FUSE -> new SmallerFuse();
            case FULL_CHARGE -> PartSetting::fullCharge;
            case SOUND_WRAP -> PartSetting::soundWrap;
            case WARM_UP -> PartSetting::warmUp;
            case CLOSED_CIRCUIT -> PartSetting::closedCircuit;
            case NEW_SWITCH -> PartSetting::newSwitch;
            case METER_VOLTS -> PartSetting::meterVolts;
            case SLOWER_CHARGE -> PartSetting::slowerCharge;
            case LOWER_CHARGE -> PartSetting::lowerCharge;
        };
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
