package org.sagwise.network;

import java.util.List;

/**
 * One solution of a {@link LinearCircuit}; its arrays are not to be changed.
 *
 * @param currentA current of each branch (A), also where it is not to be told to anyone
 * @param potentialV potential of each node (V), NaN where unknown
 * @param unsolved islands without an answer
 * @param findings why they have none
 */
record Flow(double[] currentA, double[] potentialV, boolean[] unsolved, List<Finding> findings) {

    double voltageV(int plus, int minus) {
        return potentialV[plus] - potentialV[minus];
    }
}
