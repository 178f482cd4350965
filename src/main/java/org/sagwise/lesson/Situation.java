package org.sagwise.lesson;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** The bench that the learner works on, and beside it the benches that the lesson names. */
public final class Situation {

    private final Gauge bench;
    private final Press press;
    private final Map<String, Scenario> named;
    private final Catalogue catalogue;
    private final Map<String, Gauge> gauges;

    private Situation(
            Gauge bench, Press press, Map<String, Scenario> named, Catalogue catalogue, Map<String, Gauge> gauges) {
        this.bench = bench;
        this.press = press;
        this.named = named;
        this.catalogue = catalogue;
        this.gauges = gauges;
    }

    public static Situation of(Scenario bench, Map<String, Scenario> named, Catalogue catalogue) {
        return new Situation(Gauge.of(bench, catalogue), bench.press(), named, catalogue, new HashMap<>());
    }

    /** The same lesson with another bench to work on; what is known of the named ones is kept. */
    public Situation with(Scenario other) {
        return with(other, other.press());
    }

    /** The same with the button as the learner's thumb has it; what is known of the same bench is kept. */
    Situation with(Scenario other, Press thumb) {
        Gauge gauge = other.equals(scenario()) ? bench : Gauge.of(other, catalogue);
        return new Situation(gauge, thumb, named, catalogue, gauges);
    }

    /** Whether the button is held. */
    public Press press() {
        return press;
    }

    public Gauge bench() {
        return bench;
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    /** A reading; empty if there is no such bench, part, quantity or number. */
    public OptionalDouble read(ReadingRef ref) {
        if (ref.bench().isEmpty()) {
            return bench.read(ref.when(), ref.part(), ref.quantity());
        }
        Scenario other = named.get(ref.bench().get());
        if (other == null) {
            return OptionalDouble.empty();
        }
        return gauges.computeIfAbsent(ref.bench().get(), name -> Gauge.of(other, catalogue))
                .read(ref.when(), ref.part(), ref.quantity());
    }
}
