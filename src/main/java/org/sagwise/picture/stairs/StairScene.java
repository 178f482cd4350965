package org.sagwise.picture.stairs;

import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.reading.Staircase;
import org.sagwise.scenario.Scenario;

/**
 * Everything that a picture of a staircase needs.
 *
 * @param staircase the steps
 * @param scenario whose parts they belong to
 * @param theme colours
 * @param locale language and number format
 * @param textScale size of text against the usual one
 * @param emphasis parts and links whose steps stand out
 * @param lineScale by how much thin lines are thickened, 1 for none
 * @param hush whether something about the bench is still to be foretold
 */
public record StairScene(
        Staircase staircase,
        Scenario scenario,
        Theme theme,
        Locale locale,
        double textScale,
        Emphasis emphasis,
        double lineScale,
        Hush hush) {

    /** Why there may be no steps though there are cells. */
    public enum Hush {
        NONE,
        /** They are to be foretold first. */
        ASKED
    }

    /** A scene with its lines as usual. */
    public StairScene(
            Staircase staircase, Scenario scenario, Theme theme, Locale locale, double textScale, Emphasis emphasis) {
        this(staircase, scenario, theme, locale, textScale, emphasis, 1, Hush.NONE);
    }

    /** The staircase of an assessment, in the usual text size. */
    public static StairScene of(Assessment assessment, Theme theme, Locale locale) {
        return new StairScene(assessment.staircase(), assessment.scenario(), theme, locale, 1, Emphasis.NONE);
    }

    public StairScene with(Emphasis newEmphasis) {
        return new StairScene(staircase, scenario, theme, locale, textScale, newEmphasis, lineScale, hush);
    }

    public StairScene with(Staircase newStaircase) {
        return new StairScene(newStaircase, scenario, theme, locale, textScale, emphasis, lineScale, hush);
    }

    /** The same for who is, or is not, to foretell something. */
    public StairScene withHush(Hush newHush) {
        return new StairScene(staircase, scenario, theme, locale, textScale, emphasis, lineScale, newHush);
    }

    /** Volts from the lowest potential to the highest. */
    public double spanV() {
        return staircase.highestV() - staircase.lowestV();
    }

    /** The same with room above for so many volts: beside a taller staircase on one scale. */
    public StairScene spanning(double volts) {
        return with(
                new Staircase(staircase.steps(), staircase.lanes(), staircase.lowestV(), staircase.lowestV() + volts));
    }

    boolean isEmphasised(Staircase.Step step) {
        return step.link().isPresent() ? emphasis.links().contains(step.link().getAsInt()) : emphasis.isOn(step.part());
    }
}
