package org.sagwise.network;

/** Books a finished solution anew: currents by node, voltages by element, power by source. */
final class Residuals {
    private final LinearCircuit circuit;
    private final Branches branches;
    private final Flow flow;
    private double largestCurrentA;
    private double kvlWorstV;
    private double deliveredW;
    private double absorbedW;
    private double suppliedW;

    private Residuals(LinearCircuit circuit, Flow flow) {
        this.circuit = circuit;
        this.branches = circuit.branches();
        this.flow = flow;
    }

    static Residual of(LinearCircuit circuit, Flow flow) {
        return new Residuals(circuit, flow).book();
    }

    private Residual book() {
        double[] netA = new double[branches.nodeCount];
        for (int b = 0; b < branches.count(); b++) {
            if (!circuit.solved(flow, b)) {
                continue;
            }
            double ampere = flow.currentA()[b];
            netA[branches.from[b]] -= ampere;
            netA[branches.to[b]] += ampere;
            largestCurrentA = Math.max(largestCurrentA, Math.abs(ampere));
            bookPower(b, ampere);
            bookVoltage(b, ampere);
        }
        bookDrivenPower();
        double kclWorstA = 0;
        for (double sum : netA) {
            kclWorstA = Math.max(kclWorstA, Math.abs(sum));
        }
        return new Residual(kclWorstA, largestCurrentA, kvlWorstV, deliveredW - absorbedW, suppliedW);
    }

    private void bookPower(int branch, double ampere) {
        if (branches.kind[branch] != Branches.Kind.DRIVEN) {
            bookSource(branches.drive[branch] * ampere);
            absorbedW += branches.ohm[branch] * ampere * ampere;
        }
    }

    private void bookSource(double watt) {
        deliveredW += watt;
        suppliedW += Math.max(0, watt);
    }

    /**
     * Takes the voltage from the loop: a difference of potentials would have lost its last digits.
     */
    private void bookDrivenPower() {
        for (Loop loop : circuit.drivenLoops()) {
            double ampere = flow.currentA()[loop.chord];
            if (ampere != 0 && circuit.solved(flow, loop.chord)) {
                bookSource(-loop.returnV(branches.drive, branches.ohm, flow.currentA()) * ampere);
            }
        }
    }

    private void bookVoltage(int branch, double ampere) {
        if (branches.kind[branch] != Branches.Kind.DRIVEN) {
            double volt = branches.drive[branch] - branches.ohm[branch] * ampere;
            double gap = Math.abs(volt - riseV(branch));
            kvlWorstV = gap > kvlWorstV ? gap : kvlWorstV;
        }
    }

    private double riseV(int branch) {
        return flow.voltageV(branches.to[branch], branches.from[branch]);
    }
}
