package org.sagwise.picture.layout;

import java.util.Arrays;

/** A binary heap of states by cost, without a box for each; of no long numbers, which are slow in a browser. */
final class Heap {

    private int[] costs = new int[1024];
    private int[] states = new int[1024];
    private int size;

    void clear() {
        size = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    void push(int cost, int state) {
        if (size == costs.length) {
            costs = Arrays.copyOf(costs, 2 * size);
            states = Arrays.copyOf(states, 2 * size);
        }
        int at = size++;
        while (at > 0 && isBefore(cost, state, (at - 1) / 2)) {
            copy((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        put(at, cost, state);
    }

    /** Takes the state of least cost; of equal ones that of the least number. */
    int pop() {
        int state = states[0];
        size--;
        int lastCost = costs[size];
        int lastState = states[size];
        int at = 0;
        int child = 1;
        while (child < size) {
            if (child + 1 < size && isBefore(costs[child + 1], states[child + 1], child)) {
                child++;
            }
            if (!isBefore(costs[child], states[child], lastCost, lastState)) {
                break;
            }
            copy(child, at);
            at = child;
            child = 2 * at + 1;
        }
        put(at, lastCost, lastState);
        return state;
    }

    private boolean isBefore(int cost, int state, int other) {
        return isBefore(cost, state, costs[other], states[other]);
    }

    private static boolean isBefore(int cost, int state, int otherCost, int otherState) {
        return cost < otherCost || cost == otherCost && state < otherState;
    }

    private void copy(int from, int to) {
        put(to, costs[from], states[from]);
    }

    private void put(int at, int cost, int state) {
        costs[at] = cost;
        states[at] = state;
    }
}
