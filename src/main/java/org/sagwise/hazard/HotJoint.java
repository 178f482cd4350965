package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.reading.LinkReading;
import org.sagwise.scenario.Joint;

/**
 * A joint in which much heat arises at one spot, or that has far more resistance than such joints have and takes volts
 * from the coil. A wire's two ends share its contact resistance; heat in the wire itself is another hazard.
 */
final class HotJoint implements HazardRule {

    /**
     * Heat in one joint from which on it is told, W: at some 15 K/W, of a small contact in still air, it is 30 K warmer
     * than what is around it. From memory, no source.
     */
    static final double HOT_W = 2;

    /** Heat from which on a joint is told that is as good as such joints are, W: there is too much current for it. */
    static final double HOT_ALL_THE_SAME_W = 5;

    /** What a sound clip of a sled has at most, Ω: the upper end in the catalogue, typical. */
    static final double SOUND_OHM = 0.010;

    /** Heat from which on it could hurt badly or set fire, W: by the same rule some 150 K. */
    static final double BURNING_W = 10;

    /** What joints of the kinds in use here have at most, Ω: the upper end of test clips in the catalogue, typical. */
    static final double USUAL_OHM = 0.030;

    /** Volts that a joint of more than that must take to be worth a word, V: our choice. */
    static final double TOLD_V = 0.1;

    /** One end of a joint, with the button in one position. */
    private record Spot(SwitchView view, LinkReading link, double ohm) {

        double currentA() {
            return Math.abs(link.currentA());
        }

        double heatW() {
            return currentA() * currentA() * ohm;
        }

        double dropV() {
            return currentA() * ohm;
        }

        boolean isHot() {
            return heatW() > leastHotW();
        }

        /** From which heat on this joint is told, W. */
        double leastHotW() {
            return ohm > SOUND_OHM ? HOT_W : HOT_ALL_THE_SAME_W;
        }

        boolean isLoose() {
            return ohm > USUAL_OHM && dropV() > TOLD_V;
        }
    }

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<Spot> spots = spots(context);
        List<CautionBuilder> found = new ArrayList<>();
        List<Spot> hot = spots.stream().filter(Spot::isHot).toList();
        if (!hot.isEmpty()) {
            found.add(hot(context, hot));
        }
        List<Spot> loose =
                spots.stream().filter(spot -> !spot.isHot() && spot.isLoose()).toList();
        if (!loose.isEmpty()) {
            found.add(loose(context, loose));
        }
        return found;
    }

    /** Each joint in the position in which it gets hotter, the hottest first. */
    private static List<Spot> spots(HazardContext context) {
        List<Spot> all = new ArrayList<>();
        for (SwitchView view : context.views()) {
            for (LinkReading link : view.readings().links()) {
                double ohm =
                        ohm(context.bench().scenario().links().get(link.index()).joint());
                if (ohm > 0 && Double.isFinite(link.currentA())) {
                    all.add(new Spot(view, link, ohm));
                }
            }
        }
        all.sort(Worst.first(Spot::heatW));
        Set<Integer> seen = new HashSet<>();
        return all.stream().filter(spot -> seen.add(spot.link().index())).toList();
    }

    private static double ohm(Joint joint) {
        if (joint instanceof Joint.Touch touch) {
            return touch.mohm() / 1000;
        }
        return joint instanceof Joint.Jumper jumper ? jumper.contactsMohm() / 1000 / 2 : 0;
    }

    private static CautionBuilder hot(HazardContext context, List<Spot> spots) {
        Signal signal = spots.get(0).heatW() > BURNING_W ? Signal.WARNING : Signal.CAUTION;
        return caution(context, signal, "hot", spots)
                .measured(spots.get(0).heatW(), spots.get(0).leastHotW(), "W");
    }

    private static CautionBuilder loose(HazardContext context, List<Spot> spots) {
        return caution(context, Signal.NOTICE, "loose", spots)
                .measured(spots.get(0).ohm(), USUAL_OHM, "Ω");
    }

    private static CautionBuilder caution(HazardContext context, Signal signal, String variant, List<Spot> spots) {
        Spot worst = spots.get(0);
        LinkReading link = worst.link();
        return new CautionBuilder(context, signal)
                .when(worst.view().when())
                .parts(link.from().part(), link.to().part())
                .links(spots.stream().map(spot -> spot.link().index()).toList())
                .variant(variant)
                .terminal("from", link.from())
                .terminal("to", link.to())
                .detail("currentA", worst.currentA())
                .detail("jointOhm", worst.ohm())
                .detail("dropV", worst.dropV());
    }
}
