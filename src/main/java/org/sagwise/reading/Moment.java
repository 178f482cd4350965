package org.sagwise.reading;

import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;
import org.sagwise.scenario.Press;

/**
 * A bench at one moment, solved.
 *
 * @param circuit the bench as a network
 * @param point its operating point
 * @param readings what can be measured
 */
record Moment(Circuit circuit, OperatingPoint point, Readings readings) {

    static Moment of(Bench bench, States states, Press press) {
        Circuit circuit = CircuitCompiler.compile(bench, states, press);
        OperatingPoint point = NetworkSolver.solve(circuit.network());
        return new Moment(circuit, point, new ReadingTaker(bench, states, press, circuit, point).take());
    }
}
