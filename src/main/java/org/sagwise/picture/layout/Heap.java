package org.sagwise.picture.layout;

import java.util.Arrays;

/** A binary heap of states by cost, without a box for each. */
final class Heap {

    private long[] entries = new long[1024];
    private int size;

    void clear() {
        size = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    void push(int cost, int state) {
        if (size == entries.length) {
            entries = Arrays.copyOf(entries, 2 * size);
        }
        long entry = (long) cost << 32 | state;
        int at = size++;
        while (at > 0 && entries[(at - 1) / 2] > entry) {
            entries[at] = entries[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        entries[at] = entry;
    }

    /** Takes the state of least cost; of equal ones that of the least number. */
    int pop() {
        int state = (int) entries[0];
        long last = entries[--size];
        int at = 0;
        int child = 1;
        while (child < size) {
            if (child + 1 < size && entries[child + 1] < entries[child]) {
                child++;
            }
            if (entries[child] >= last) {
                break;
            }
            entries[at] = entries[child];
            at = child;
            child = 2 * at + 1;
        }
        entries[at] = last;
        return state;
    }
}
