package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.errand.Errand;

/** Solves networks. */
public final class NetworkSolver {
    private NetworkSolver() {}

    /**
     * The operating point of a network at this instant. Always returns, in a bounded number of
     * steps; what cannot be solved is NaN there and explained by its findings. See the package
     * description for method and accuracy.
     */
    public static OperatingPoint solve(Network network) {
        Errand.heed();
        DeviceSettling.Settled settled = DeviceSettling.settle(network);
        LinearCircuit circuit = LinearCircuit.of(network, settled.stance());
        Flow flow = circuit.solve();
        List<Finding> findings = new ArrayList<>(settled.findings());
        findings.addAll(flow.findings());
        return new OperatingPoint(network, circuit, flow, settled.stance(), findings);
    }
}
