package org.sagwise.plan.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Builds of one bench whose parts are not quite as printed: each number that has a tolerance lies
 * somewhere within it.
 */
final class Builds {

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final Scenario scenario;
    private final Catalogue catalogue;
    private final List<Input> inputs = new ArrayList<>();

    /**
     * A number with a tolerance.
     *
     * @param printed what it is on the bench, as the file writes it
     */
    record Input(Variable variable, Tolerance tolerance, double printed) {

        /** Whether it shows only while time passes, and no reading at the start depends on it. */
        boolean isOfTime() {
            return variable.key().equals("capacity_mAh");
        }

        double at(double share) {
            double number = tolerance.apply(printed, NORMAL.inverseCumulativeProbability(share));
            KeySpec.NumberType allowed = variable.allowed();
            return Math.max(allowed.least(), Math.min(allowed.most(), number));
        }
    }

    /**
     * @param fixed a number that is given and not left to chance
     */
    Builds(Scenario scenario, Catalogue catalogue, Optional<Variable> fixed) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        Bench bench = Bench.of(scenario, catalogue);
        for (Variable variable : Variable.all(scenario)) {
            Optional<Tolerance> tolerance = Tolerances.of(scenario, variable);
            OptionalDouble printed = variable.present(bench);
            boolean isOwn = isSaid(variable, bench);
            if (tolerance.isPresent()
                    && isOwn
                    && printed.isPresent()
                    && printed.getAsDouble() != 0
                    && !fixed.equals(Optional.of(variable))) {
                inputs.add(new Input(variable, tolerance.get(), printed.getAsDouble()));
            }
        }
    }

    /** A cell has a charge or a rest voltage: the other one follows, and is no number of its own. */
    private boolean isSaid(Variable variable, Bench bench) {
        boolean isCharge = variable.key().equals("charge") || variable.key().equals("rest_V");
        return !isCharge || bench.values(variable.owner()).isSaid(variable.key());
    }

    List<Input> inputs() {
        return inputs;
    }

    /**
     * One of them.
     *
     * @param shares where each input lies in its distribution, 0 to 1, excluded
     */
    Bench build(double[] shares) {
        Scenario changed = scenario;
        for (int i = 0; i < shares.length; i++) {
            changed = changed(changed, i, shares[i]);
        }
        return Bench.of(changed, catalogue);
    }

    /** One of them with one input elsewhere in its distribution; looks up no more than it has to. */
    Bench rebuild(Bench build, int input, double share) {
        String owner = inputs.get(input).variable().owner();
        Scenario changed = changed(build.scenario(), input, share);
        return build.with(changed, scenario.part(owner).map(Part::id));
    }

    private Scenario changed(Scenario before, int input, double share) {
        Variable variable = inputs.get(input).variable();
        double number = inputs.get(input).at(share);
        if (scenario.part(variable.owner()).isPresent()) {
            return before.withPart(
                    variable.owner(), old -> new Part(old.id(), old.kind(), set(old.keys(), variable, number)));
        }
        List<Link> links = new ArrayList<>(before.links());
        int place = Link.placeOf(links, variable.owner());
        Link old = links.get(place);
        links.set(place, new Link(old.from(), old.to(), set(old.keys(), variable, number)));
        return before.withLinks(links);
    }

    private static Keys set(Keys keys, Variable variable, double number) {
        return variable.group().isEmpty()
                ? keys.with(variable.key(), number)
                : keys.with(
                        variable.group(),
                        keys.group(variable.group()).orElse(Keys.NONE).with(variable.key(), number));
    }
}
