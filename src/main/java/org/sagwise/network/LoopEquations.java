package org.sagwise.network;

/** How much current must circulate in each of a set of loops to use up an excess of voltage. */
interface LoopEquations {

    /** Loop currents (A) that drop the given volts round each loop. */
    double[] circulating(double[] excessV);
}
