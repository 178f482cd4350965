package org.sagwise.caution;

import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;

/**
 * What hazard rules look at: the bench, and its readings with the button let go and held. Both are
 * looked at whatever the scenario says, because somebody who builds a circuit will press it.
 *
 * @param bench the bench
 * @param rest readings with the button let go
 * @param fired readings at the instant at which it is pressed
 */
public record Evidence(Bench bench, Readings rest, Readings fired) {

    public static Evidence of(Bench bench) {
        return new Evidence(bench, bench.rest(), bench.fired());
    }
}
