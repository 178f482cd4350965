package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.reading.States;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;

/**
 * More volts than a resettable fuse bears, once it has tripped: while it is cool hardly any stand across it, so the
 * bench is read once more with that one part hot.
 */
final class PtcOverVoltage implements HazardRule {

    static final Listing LISTING = new Listing(
            "WARNING",
            "across a resettable fuse that has tripped stand more volts than `max_V`",
            "the part's own",
            "it can arc and burn");

    /** So far above its switch temperature it lets as good as nothing through, K. */
    private static final double ABOVE_SWITCH_K = 50;

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (Part part : context.partsOf(PartKind.PTC)) {
            OptionalDouble mostV = context.bench().values(part.id()).number("max_V");
            if (mostV.isPresent()) {
                judge(context, part, mostV.getAsDouble(), found);
            }
        }
        return found;
    }

    private static void judge(HazardContext context, Part part, double mostV, List<CautionBuilder> found) {
        for (SwitchView view : context.views()) {
            double trippedV = trippedV(context, part.id(), view == context.held() ? Press.HELD : Press.RELEASED);
            if (trippedV > mostV) {
                found.add(new CautionBuilder(context, Signal.WARNING)
                        .when(view.when())
                        .parts(part.id())
                        .measured(trippedV, mostV, "V"));
                return;
            }
        }
    }

    private static double trippedV(HazardContext context, String id, Press press) {
        States start = context.bench().start();
        Map<String, Double> hotC = Map.of(id, PtcSpec.SWITCH_C + ABOVE_SWITCH_K);
        States tripped = new States(start.cells(), hotC, start.linkC(), start.blownFuses(), start.broken());
        return context.bench()
                .at(tripped, press)
                .part(id)
                .map(reading -> Math.abs(reading.voltsV()))
                .orElse(0.0);
    }
}
