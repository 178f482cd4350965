package org.sagwise.run.playback;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.scenario.Press;

/**
 * Time that has passed and is not computed yet, with every turn of the button in it, so that a
 * short press between two frames is not lost.
 */
final class Owed {

    /**
     * A stretch of time with the button held or let go.
     *
     * @param press whether it is held
     * @param seconds how long, s on the bench, 0 or more
     */
    record Stretch(Press press, double seconds) {}

    private final List<Stretch> stretches = new ArrayList<>();

    void add(Press press, double seconds) {
        int last = stretches.size() - 1;
        if (last >= 0 && stretches.get(last).press() == press) {
            double before = stretches.get(last).seconds();
            stretches.set(last, new Stretch(press, before + seconds));
        } else {
            stretches.add(new Stretch(press, seconds));
        }
    }

    double seconds() {
        return stretches.stream().mapToDouble(Stretch::seconds).sum();
    }

    boolean isEmpty() {
        return stretches.isEmpty();
    }

    void clear() {
        stretches.clear();
    }

    List<Stretch> takeAll() {
        List<Stretch> all = List.copyOf(stretches);
        stretches.clear();
        return all;
    }
}
