package org.sagwise.picture.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Lays benches out and remembers the last few, since finding places and ways is the dearest part of showing an edit: a
 * bench that comes back, or of which only numbers and names were changed, lies where it lay. Not for several threads.
 */
public final class KnownLayouts {

    private static final int KEPT = 24;

    private final Deque<Laid> kept = new ArrayDeque<>();

    /** A bench and where it lies. */
    private record Laid(Scenario scenario, BenchLayout layout) {}

    /** What {@link BenchLayout#of(Scenario, double, Drawing)} says. */
    public BenchLayout of(Scenario scenario, double textScale, Drawing drawing) {
        Optional<Laid> known = kept.stream()
                .filter(it -> it.layout.textScale() == textScale && it.layout.drawing() == drawing)
                .filter(it -> isLaidAlike(it.scenario, scenario))
                .findFirst();
        known.ifPresent(kept::remove);
        Laid laid = new Laid(
                scenario,
                known.map(it -> it.layout.showing(scenario.parts()))
                        .orElseGet(() -> BenchLayout.of(scenario, textScale, drawing)));
        kept.addFirst(laid);
        if (kept.size() > KEPT) {
            kept.removeLast();
        }
        return laid.layout;
    }

    /** Whether two benches lie alike: all that the layout asks of parts and links is looked at here. */
    static boolean isLaidAlike(Scenario one, Scenario other) {
        return one == other
                || areAlike(one.parts(), other.parts(), KnownLayouts::isLaidAlike)
                        && areAlike(one.links(), other.links(), KnownLayouts::isLedAlike)
                        && one.placement().equals(other.placement())
                        && one.notes().equals(other.notes())
                        && one.probes().equals(other.probes());
    }

    private static boolean isLaidAlike(Part one, Part other) {
        return one.id().equals(other.id())
                && one.kind() == other.kind()
                && Objects.equals(one.meterMode(), other.meterMode());
    }

    private static boolean isLedAlike(Link one, Link other) {
        return one.from().equals(other.from())
                && one.to().equals(other.to())
                && one.id().equals(other.id())
                && one.joint() instanceof Joint.Jumper == other.joint() instanceof Joint.Jumper;
    }

    private interface Alike<T> {
        boolean test(T one, T other);
    }

    private static <T> boolean areAlike(List<T> some, List<T> others, Alike<T> alike) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (some.get(i) != others.get(i) && !alike.test(some.get(i), others.get(i))) {
                return false;
            }
        }
        return true;
    }
}
