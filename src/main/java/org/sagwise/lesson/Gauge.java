package org.sagwise.lesson;

import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.reading.Readings;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;

/** Takes readings of one bench; runs it through time only when a reading asks for that. */
public final class Gauge {

    private final Bench bench;
    private RunResult run;
    private List<Caution> cautions;

    private Gauge(Bench bench) {
        this.bench = bench;
    }

    public static Gauge of(Scenario scenario, Catalogue catalogue) {
        return new Gauge(Bench.of(scenario, catalogue));
    }

    public Bench bench() {
        return bench;
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    /** What the hazard rules find. */
    public List<Caution> cautions() {
        if (cautions == null) {
            cautions = Hazards.check(bench);
        }
        return cautions;
    }

    /** A reading; empty if this bench has no such part, quantity or number. */
    public OptionalDouble read(When when, String part, String quantity) {
        OptionalDouble value = when == When.RUN
                ? RunQuantities.read(this, part, quantity)
                : NamedReading.read(
                        readings(when), part, quantity, Link.placeOf(scenario().links(), part));
        return value.isPresent() && Double.isNaN(value.getAsDouble()) ? OptionalDouble.empty() : value;
    }

    private Readings readings(When when) {
        return when == When.REST ? bench.rest() : bench.fired();
    }

    RunResult run() {
        if (run == null) {
            run = Runner.run(bench, RunPlan.held());
        }
        return run;
    }
}
