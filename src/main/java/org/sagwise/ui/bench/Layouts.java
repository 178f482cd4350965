package org.sagwise.ui.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;

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
     * @param textScale wanted size of figures on the screen against the usual one
     * @param drawing things on the bench, or a schematic
     */
    record Asked(Scenario scenario, double textScale, Drawing drawing) {

        /** Works it out, on whatever thread. */
        BenchLayout layout(double width, double height) {
            return SettingOut.of(scenario, textScale, drawing, width, height);
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
