package org.sagwise.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.Gauge;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CoilReading;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.SetPartKeys;

/**
 * A coil where it lies, wound anew in thought.
 *
 * @param coil its id
 */
public record CoilOnBench(Scenario scenario, Catalogue catalogue, String coil) {

    private static final MathContext DIGITS = new MathContext(9);
    private static final double MM_PER_M = 1e3;
    private static final double SAME = 1e-9;

    /** How it is wound now, where that is known. */
    public Optional<CoilWinding> winding() {
        return Optional.ofNullable(Bench.of(scenario, catalogue).coils().get(coil))
                .flatMap(resolved -> resolved.winding());
    }

    /** What it has now at 20 °C, Ω; NaN where there is no such coil. */
    public double ohm() {
        return Optional.ofNullable(Bench.of(scenario, catalogue).coils().get(coil))
                .map(resolved -> resolved.ohm20())
                .orElse(Double.NaN);
    }

    /** Ohms with which this bench gives it so many watts; empty where no coil or more than one would. */
    public OptionalDouble ohmFor(double watts) {
        return SameWatts.coilFor(scenario, catalogue, watts) instanceof SameWatts.Answer.Found found
                ? OptionalDouble.of(found.ohm())
                : OptionalDouble.empty();
    }

    /** Volts at it on this bench, wound so, with the button held; empty where no current reaches it. */
    public OptionalDouble voltsWith(CoilWinding wound) {
        double volts = Bench.of(rewound(wound).apply(scenario), catalogue)
                .fired()
                .coil(coil)
                .map(CoilReading::voltsV)
                .map(Math::abs)
                .orElse(Double.NaN);
        return volts > SAME ? OptionalDouble.of(volts) : OptionalDouble.empty();
    }

    /** The edit that winds it so. */
    public SetPartKeys rewound(CoilWinding wound) {
        return SetPartKeys.set(coil, "wire", wire(wound));
    }

    /** A winding as keys of the file; a wire of a gauge is told by it. */
    private static Keys wire(CoilWinding wound) {
        double diameterM = wound.wire().diameterM();
        Gauge near = Gauge.nearest(diameterM);
        boolean gauged = near.number() >= 0 && Math.abs(near.diameterM() - diameterM) < SAME;
        Keys keys = Keys.of("alloy", wound.wire().alloy().id());
        keys = gauged ? keys.with("awg", near.number()) : keys.with("diameter_mm", mm(diameterM));
        keys = keys.with("wraps", wound.wraps()).with("inner_mm", mm(wound.innerDiameterM()));
        keys = wound.legsM() > 0 ? keys.with("legs_mm", mm(wound.legsM())) : keys;
        return wound.wire().strands() > 1 ? keys.with("strands", wound.wire().strands()) : keys;
    }

    /** Without the last digits that binary numbers leave behind. */
    private static double mm(double metres) {
        return BigDecimal.valueOf(metres * MM_PER_M).round(DIGITS).doubleValue();
    }
}
