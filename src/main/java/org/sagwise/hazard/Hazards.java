package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.sagwise.reading.Bench;

/** All hazard rules. */
public final class Hazards {

    /** In the order in which cautions of the same gravity are told. */
    private static final List<HazardRule> RULES = List.of(
            new ReversedInParallel(),
            new PackShorted(),
            new LoadShorts(),
            new TornWrapTouching(),
            new CoilBypassed(),
            new MeterOnAmps(),
            new UnequalRows(),
            new CellOverLimit(),
            new PulseTakenForSteady(),
            new UnequalChargeInParallel(),
            new ReversedInSeries(),
            new ChargeOverLimit(),
            new ChargerTooHigh(),
            new SupplyChargesCell(),
            new CellAboveFull(),
            new CellTemperature(),
            new ChargingTemperature(),
            new CellDrivenBackwards(),
            new CellDeeplyDischarged(),
            new JumperOverFusing(),
            new SwitchStuck(),
            new LabelClaims(),
            new MixedChemistry(),
            new NoAnswer(),
            new MixedCapacity(),
            new MixedLimit(),
            new MixedHealth(),
            new MixedResistance(),
            new UnequalChargeInSeries(),
            new CellNearLimit(),
            new CoilOverLimit(),
            new JumperOverAmpacity(),
            new FuseTooLarge(),
            new TornWrap(),
            new OpenCircuit(),
            new BoardTrouble(),
            new GuardWillTrip(),
            new FuseWillOpen(),
            new CellEmpty(),
            new CellBelowCutoff(),
            new JointOnWrap(),
            new MeterOnOhms());

    private Hazards() {}

    /**
     * Every caution about a bench, with the button let go and held, the gravest first. What only
     * follows from something graver is left out.
     */
    public static List<Caution> check(Bench bench) {
        HazardContext context = HazardContext.of(bench);
        List<Caution> all = new ArrayList<>();
        RULES.forEach(rule -> all.addAll(rule.check(context)));
        List<Caution> left = new Suppression(context).thin(all);
        left.sort(Comparator.comparing(Caution::signal));
        return List.copyOf(left);
    }
}
