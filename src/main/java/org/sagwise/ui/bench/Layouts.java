package org.sagwise.ui.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.settings.AppliedLooks;

/**
 * Where everything lies. The last layouts of benches that are large are kept: they take long, and
 * do not depend on the room there is. Belongs to the thread of the window.
 */
public final class Layouts {

    /** As many as a person goes back and forth between: bench and schematic, and one before. */
    private static final int KEPT = 4;

    private final Map<Asked, BenchLayout> kept = new LinkedHashMap<>();

    /**
     * What a layout of a large bench depends on.
     *
     * @param figureScale wanted size of figures on the screen against the usual one
     * @param projected whether a class looks on, for whom figures matter more than parts
     * @param drawing things on the bench, or a schematic
     */
    record Asked(Scenario scenario, double figureScale, boolean projected, Drawing drawing) {

        static Asked of(Scenario scenario, AppliedLooks looks, Drawing drawing) {
            return new Asked(scenario, looks.figureScale(), looks.isProjected(), drawing);
        }

        /** Works it out, on whatever thread. */
        BenchLayout layout(double width, double height) {
            return projected
                    ? SettingOut.projected(scenario, figureScale, drawing, width, height)
                    : SettingOut.of(scenario, figureScale, drawing, width, height);
        }
    }

    /** The layout for a room of this size, in pixels. */
    BenchLayout of(Asked asked, double width, double height) {
        BenchLayout known = kept.get(asked);
        if (known != null) {
            return known;
        }
        BenchLayout layout = asked.layout(width, height);
        keep(asked, layout);
        return layout;
    }

    /** Whether a layout is known, so that it takes no time. */
    boolean has(Asked asked) {
        return kept.containsKey(asked);
    }

    /** Keeps a layout that was worked out ahead. */
    void keep(Asked asked, BenchLayout layout) {
        if (SettingOut.fitsAnyRoom(asked.scenario())) {
            kept.put(asked, layout);
            kept.keySet().stream()
                    .limit(Math.max(0, kept.size() - KEPT))
                    .toList()
                    .forEach(kept::remove);
        }
    }
}
