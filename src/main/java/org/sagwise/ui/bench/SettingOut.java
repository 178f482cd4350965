package org.sagwise.ui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Scenario;

/**
 * Sets a bench out for the size at which it will be seen. A large circuit is shown small to fit;
 * its figures are then set larger against the parts, so that they can still be read.
 */
public final class SettingOut {

    /** Figures may be set this much larger against the parts. */
    private static final List<Double> STRETCHES = List.of(1.0, 1.25, 1.5);

    /** Where there is little room, figures may be set larger still. */
    private static final List<Double> SMALL_STRETCHES = List.of(1.0, 1.25, 1.5, 1.75, 2.0);

    /** A class that looks on reads figures first; parts may be as small against them as they must. */
    private static final List<Double> PROJECTED_STRETCHES = List.of(0.6, 0.8, 1.0, 1.25, 1.5, 1.75, 2.0, 2.5);

    /** Largest size of figures against the parts. */
    private static final double LARGEST_TEXT = 2;

    /** The same where a class looks on. */
    private static final double LARGEST_PROJECTED = 4;

    /** Share of their wanted size at which figures are large enough. */
    private static final double ENOUGH = 0.95;

    /** With more parts or notes than this, only one layout is tried. */
    private static final int MOST_PARTS = 40;

    private SettingOut() {}

    /**
     * The layout whose figures come out as large as wanted, or as nearly so as can be.
     *
     * @param textScale wanted size of figures on the screen against the usual one
     * @param drawing things on the bench, or a schematic
     */
    static BenchLayout of(Scenario scenario, double textScale, Drawing drawing, double width, double height) {
        return of(scenario, textScale, drawing, STRETCHES, LARGEST_TEXT, Framing::roomy, width, height);
    }

    /** The same for a class that looks on. */
    static BenchLayout projected(Scenario scenario, double textScale, Drawing drawing, double width, double height) {
        return of(
                scenario,
                textScale / ENOUGH,
                drawing,
                PROJECTED_STRETCHES,
                LARGEST_PROJECTED,
                Framing::roomy,
                width,
                height);
    }

    /** The same in a small picture, where parts may be smaller against their figures. */
    public static BenchLayout small(Scenario scenario, double textScale, double width, double height) {
        return of(
                scenario,
                textScale,
                Drawing.BENCH,
                SMALL_STRETCHES,
                LARGEST_TEXT,
                UnaryOperator.identity(),
                width,
                height);
    }

    /**
     * @param shown the room that is shown for what a bench takes
     */
    private static BenchLayout of(
            Scenario scenario,
            double textScale,
            Drawing drawing,
            List<Double> stretches,
            double largest,
            UnaryOperator<Box> shown,
            double width,
            double height) {
        ToDoubleFunction<BenchLayout> seen = layout -> layout.textScale()
                * BenchView.fit(shown.apply(layout.bounds()), width, height).scale();
        List<BenchLayout> layouts = tried(scenario, stretches)
                .map(stretch -> Math.min(largest, Math.max(1, textScale * stretch)))
                .distinct()
                .map(scale -> BenchLayout.of(scenario, scale, drawing))
                .toList();
        return layouts.stream()
                .filter(layout -> seen.applyAsDouble(layout) >= ENOUGH * textScale)
                .findFirst()
                .orElseGet(() ->
                        layouts.stream().max(Comparator.comparingDouble(seen)).orElseThrow());
    }

    private static Stream<Double> tried(Scenario scenario, List<Double> stretches) {
        return fitsAnyRoom(scenario) ? Stream.of(1.0) : stretches.stream();
    }

    /** Whether the layout of a scenario does not depend on the room there is. */
    static boolean fitsAnyRoom(Scenario scenario) {
        return scenario.parts().size() > MOST_PARTS || scenario.notes().size() > MOST_PARTS;
    }
}
