package org.sagwise.fuzz;

import java.util.Random;

/**
 * Chance that reads its numbers from bytes, and gives zeros behind their end: whoever changes the
 * bytes decides what happens.
 */
final class ByteRandom extends Random {

    private static final long serialVersionUID = 1;

    private final transient byte[] bytes;
    private transient int at;

    ByteRandom(byte[] bytes) {
        this.bytes = bytes.clone();
    }

    /** One byte a number where that is enough, so that a byte changed is one choice changed. */
    @Override
    public int nextInt(int bound) {
        return bound <= 256 ? next() * bound >>> 8 : Math.floorMod(next(31), bound);
    }

    @Override
    protected int next(int bits) {
        int value = 0;
        for (int i = 0; i < (bits + 7) / 8; i++) {
            value = value << 8 | next();
        }
        return bits == 32 ? value : value & (1 << bits) - 1;
    }

    private int next() {
        return at < bytes.length ? bytes[at++] & 0xff : 0;
    }
}
