package org.sagwise.picture.scene;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.PackSense;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Theme;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.reading.States;
import org.sagwise.scenario.Scenario;

/**
 * Everything that a picture of a bench needs. Immutable; the screen makes a new one when something
 * changes.
 *
 * @param bench the bench
 * @param layout where everything lies
 * @param readings what is shown in figures and colours
 * @param states charge and temperatures that belong to the readings
 * @param cautions what parts are flagged for
 * @param theme colours
 * @param locale language and number format
 * @param details what is shown
 * @param emphasis what stands out
 * @param lineScale by how much thin lines are thickened, 1 for none
 */
public record BenchScene(
        Bench bench,
        BenchLayout layout,
        Readings readings,
        States states,
        List<Caution> cautions,
        Theme theme,
        Locale locale,
        Set<Detail> details,
        Emphasis emphasis,
        double lineScale) {

    public BenchScene {
        cautions = List.copyOf(cautions);
        details = details.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(details));
    }

    /** The scene of an assessment, with the usual details. */
    public static BenchScene of(Assessment assessment, BenchLayout layout, Theme theme, Locale locale) {
        return new BenchScene(
                assessment.bench(),
                layout,
                assessment.readings(),
                assessment.states(),
                assessment.cautions(),
                theme,
                locale,
                Detail.usual(),
                Emphasis.NONE,
                1);
    }

    /** The same scene at another moment. */
    public BenchScene at(Readings newReadings, States newStates) {
        return new BenchScene(
                bench, layout, newReadings, newStates, cautions, theme, locale, details, emphasis, lineScale);
    }

    public BenchScene with(Emphasis newEmphasis) {
        return new BenchScene(
                bench, layout, readings, states, cautions, theme, locale, details, newEmphasis, lineScale);
    }

    public BenchScene with(Set<Detail> newDetails) {
        return new BenchScene(
                bench, layout, readings, states, cautions, theme, locale, newDetails, emphasis, lineScale);
    }

    /** The same scene with thin lines thickened. */
    public BenchScene withLines(double newLineScale) {
        return new BenchScene(
                bench, layout, readings, states, cautions, theme, locale, details, emphasis, newLineScale);
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    /** Whether symbols are drawn, and not things. */
    public boolean isSchematic() {
        return layout.drawing() == Drawing.SCHEMATIC;
    }

    public boolean shows(Detail detail) {
        return details.contains(detail);
    }

    /** The gravest signal among the cautions that speak of a part. */
    public Optional<Signal> signalOf(String part) {
        return cautions.stream()
                .filter(caution -> caution.parts().contains(part))
                .map(Caution::signal)
                .min(Comparator.naturalOrder());
    }

    /**
     * Whether a cell stands the wrong way round: because a caution says so, or because the layout
     * that was computed for it turned it against the others of a pack that is not one.
     */
    public boolean isReversed(PartBox cell) {
        boolean placed = !isSchematic() && scenario().placement().containsKey(cell.id());
        return !placed && cell.quarters() >= 2 && !PackSense.isOne(scenario(), cell.id())
                || cautions.stream()
                        .anyMatch(caution -> caution.id().startsWith("reversed")
                                && caution.parts().indexOf(cell.id()) == 0);
    }
}
