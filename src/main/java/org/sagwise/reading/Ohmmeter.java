package org.sagwise.reading;

import java.util.Optional;
import java.util.Set;
import org.sagwise.network.Element;
import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;
import org.sagwise.part.Role;
import org.sagwise.scenario.Part;

/**
 * The meter in the hand on ohms: a source of its own drives a small current between the probes, and
 * the voltage over that current is the resistance. That holds only while no other source has a part
 * in it, so it refuses where one carries current, with the button let go or held.
 */
record Ohmmeter(HandMeter meter) {

    private static final Set<Role> SOURCES = Set.of(Role.SOURCE, Role.CONVERTER);

    /** Voltage and inner resistance of the meter's own source: 1 mA into a short, from memory. */
    private static final double TEST_V = 1;

    private static final double TEST_OHM = 1000;

    /** A source carries current from this share of the test current on; below it is rounding. */
    private static final double CARRIES = 1e-6;

    /** Above this the meter finds no way, Ω: typical of hand meters, from memory. */
    private static final double MOST_OHM = 50e6;

    MeterDisplay read() {
        for (Circuit circuit : meter.positions()) {
            Optional<String> driving = driving(circuit, tested(circuit));
            if (driving.isPresent()) {
                return new MeterDisplay.Refused(MeterDisplay.Why.ALIVE, driving.get(), Double.NaN);
            }
        }
        return new MeterDisplay.Ohms(ohm());
    }

    private double ohm() {
        if (meter.red() == meter.black()) {
            return 0;
        }
        OperatingPoint point = tested(meter.now());
        double testA = point.currentA(meter.now().network().elements().size());
        double ohm = point.voltageV(meter.red(), meter.black()) / testA;
        return testA > 0 && ohm <= MOST_OHM ? Math.max(0, ohm) : Double.POSITIVE_INFINITY;
    }

    private OperatingPoint tested(Circuit circuit) {
        return NetworkSolver.solve(
                HandMeter.with(circuit, new Element.Source(meter.red(), meter.black(), TEST_V, TEST_OHM)));
    }

    /** The first source that carries current in the part of the bench where the probes are. */
    private Optional<String> driving(Circuit circuit, OperatingPoint point) {
        return meter.bench().scenario().parts().stream()
                .filter(part -> SOURCES.contains(part.kind().role()))
                .filter(part -> isNear(circuit, point, part))
                .map(Part::id)
                .filter(id -> carries(HandMeter.currentA(circuit, point, id)))
                .findFirst();
    }

    private boolean isNear(Circuit circuit, OperatingPoint point, Part part) {
        return part.terminals().stream()
                .map(circuit::node)
                .anyMatch(node -> point.island(node) == point.island(meter.red())
                        || point.island(node) == point.island(meter.black()));
    }

    private static boolean carries(double currentA) {
        return !(Math.abs(currentA) <= CARRIES * TEST_V / TEST_OHM);
    }
}
