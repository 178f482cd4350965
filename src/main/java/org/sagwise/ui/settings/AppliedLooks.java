package org.sagwise.ui.settings;

import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;

/**
 * What the window looks like at the moment, choices and system put together.
 *
 * @param theme light, dark or high contrast
 * @param textPercent size of text, 100 to 200 percent
 * @param motion full or reduced
 * @param drawing things on the bench, or a schematic
 * @param lineScale by how much thin lines are thickened, 1 for none
 * @param figureScale wanted size of the figures on the bench against their usual size, 1 or more
 */
public record AppliedLooks(
        Theme theme, int textPercent, Motion motion, Drawing drawing, double lineScale, double figureScale) {

    /** By how much thin lines are thickened on a projector: the last row must see them. */
    private static final double PROJECTOR_LINES = 2;

    /**
     * The same for a class that looks on from further away.
     *
     * @param leastText least size of text, in percent
     * @param leastFigures least size of figures on the bench against their usual size
     */
    AppliedLooks projected(int leastText, double leastFigures) {
        int percent = Math.max(textPercent, leastText);
        return new AppliedLooks(
                theme, percent, motion, drawing, PROJECTOR_LINES, Math.max(percent / 100.0, leastFigures));
    }

    /** Whether a class looks on. */
    public boolean isProjected() {
        return lineScale > 1;
    }

    /** Size of text against its usual size, 1 to 2. */
    public double textScale() {
        return textPercent / 100.0;
    }
}
