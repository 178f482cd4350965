package org.sagwise.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.network.Element;
import org.sagwise.network.Network;
import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;
import org.sagwise.part.Role;
import org.sagwise.reading.MeterDisplay.Refused;
import org.sagwise.reading.MeterDisplay.Why;
import org.sagwise.scenario.Part;

/**
 * The meter in the hand on amps, which is nearly a wire. With its probes on the two ends of a joint
 * it reads as if that joint were opened and the meter put between; in a gap it reads as if it
 * closed it. Anywhere else it would be a short, or would lead the current past what it shall count:
 * there it refuses, and says what would happen.
 */
record Ammeter(HandMeter meter) {

    /** What the fuse of the meter bears, A: of a large range of hand meters, from memory. */
    static final double FUSE_A = 20;

    private static final Set<Role> LOADS = Set.of(Role.LOAD, Role.CONVERTER);

    private static final Set<Role> SOURCES = Set.of(Role.SOURCE);

    /** Currents below this count as none, A. */
    private static final double NONE_A = 1e-6;

    /** Goes nowhere: what takes the place of a joint that is opened. */
    private static final double NOTHING_A = 0;

    MeterDisplay read() {
        if (meter.red() == meter.black()) {
            return new Refused(Why.ONE_POINT, "", Double.NaN);
        }
        List<Integer> joints = joints(meter.now());
        if (isJoinedWithout(meter.now(), joints)) {
            return new Refused(Why.JOINED_ANYWAY, "", Double.NaN);
        }
        for (Circuit circuit : meter.positions()) {
            Optional<MeterDisplay> trouble = trouble(circuit, joints(circuit));
            if (trouble.isPresent()) {
                return trouble.get();
            }
        }
        OperatingPoint point = NetworkSolver.solve(inLine(meter.now(), joints));
        return new MeterDisplay.Amps(point.currentA(place(meter.now(), joints)), joint());
    }

    /** Elements of the joints that lead straight from probe to probe. */
    private List<Integer> joints(Circuit circuit) {
        return IntStream.of(circuit.elementOfLink())
                .filter(element -> element >= 0)
                .filter(element ->
                        isBetween(circuit.network().elements().get(element).nodes()))
                .boxed()
                .toList();
    }

    /** The link that the meter takes the place of. */
    private OptionalInt joint() {
        int[] elements = meter.now().elementOfLink();
        return IntStream.range(0, elements.length)
                .filter(link -> elements[link] >= 0)
                .filter(link -> isBetween(
                        meter.now().network().elements().get(elements[link]).nodes()))
                .findFirst();
    }

    private boolean isBetween(List<Integer> nodes) {
        return Set.copyOf(nodes).equals(Set.of(meter.red(), meter.black()));
    }

    /** Whether other joints than these lead from probe to probe. */
    private boolean isJoinedWithout(Circuit circuit, List<Integer> joints) {
        List<Element> others = IntStream.of(circuit.elementOfLink())
                .filter(element -> element >= 0 && !joints.contains(element))
                .mapToObj(element -> circuit.network().elements().get(element))
                .toList();
        OperatingPoint point = NetworkSolver.solve(new Network(circuit.network().nodeCount(), others, List.of()));
        return point.island(meter.red()) == point.island(meter.black());
    }

    /**
     * The network with the meter in line: behind what the first joint is made of, while the other
     * joints are opened; in a gap it comes last.
     */
    private Network inLine(Circuit circuit, List<Integer> joints) {
        List<Element> elements = new ArrayList<>(circuit.network().elements());
        joints.forEach(joint -> elements.set(joint, new Element.CurrentSource(meter.red(), meter.black(), NOTHING_A)));
        if (joints.isEmpty()) {
            elements.add(shunt(0));
        } else {
            elements.set(joints.get(0), shunt(ohm(circuit, joints.get(0))));
        }
        return new Network(
                circuit.network().nodeCount(), elements, circuit.network().referencePreference());
    }

    /** The meter, and a joint before it. */
    private Element shunt(double jointOhm) {
        return new Element.Resistance(meter.red(), meter.black(), jointOhm + MeterInput.handShuntOhm());
    }

    private static double ohm(Circuit circuit, int joint) {
        return circuit.network().elements().get(joint) instanceof Element.Resistance resistance ? resistance.ohm() : 0;
    }

    /** Which element the meter is. */
    private static int place(Circuit circuit, List<Integer> joints) {
        return joints.isEmpty() ? circuit.network().elements().size() : joints.get(0);
    }

    private Optional<MeterDisplay> trouble(Circuit circuit, List<Integer> joints) {
        OperatingPoint with = NetworkSolver.solve(inLine(circuit, joints));
        double meterA = Math.abs(with.currentA(place(circuit, joints)));
        // In line nothing is led past a load: the meter is where the current goes anyway.
        Optional<String> past = joints.isEmpty() ? past(circuit, with) : Optional.empty();
        if (past.isPresent()) {
            return Optional.of(new Refused(Why.PAST_LOAD, past.get(), meterA));
        }
        if (meterA <= FUSE_A || Double.isNaN(meterA)) {
            return Optional.empty();
        }
        boolean loaded = loads().anyMatch(load -> sizeA(circuit, with, load) >= meterA / 2);
        return Optional.of(
                loaded
                        ? new Refused(Why.ABOVE_FUSE, "", meterA)
                        : new Refused(Why.SHORT, busiest(circuit, with), meterA));
    }

    /** A load that loses more than half of its current to the meter. */
    private Optional<String> past(Circuit circuit, OperatingPoint with) {
        OperatingPoint without = NetworkSolver.solve(circuit.network());
        return loads().filter(load -> sizeA(circuit, without, load) > NONE_A)
                .filter(load -> sizeA(circuit, with, load) < sizeA(circuit, without, load) / 2)
                .findFirst();
    }

    private Stream<String> loads() {
        return ids(LOADS);
    }

    private Stream<String> ids(Set<Role> roles) {
        return meter.bench().scenario().parts().stream()
                .filter(part -> roles.contains(part.kind().role()))
                .map(Part::id);
    }

    private String busiest(Circuit circuit, OperatingPoint point) {
        return ids(SOURCES)
                .max(Comparator.comparingDouble(id -> sizeA(circuit, point, id)))
                .orElse("");
    }

    private static double sizeA(Circuit circuit, OperatingPoint point, String part) {
        return Math.abs(HandMeter.currentA(circuit, point, part));
    }
}
