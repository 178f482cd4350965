package org.sagwise.ui.kit;

import java.awt.font.FontRenderContext;
import javafx.scene.canvas.GraphicsContext;
import org.jfree.fx.FXGraphics2D;

/**
 * Paints on a JavaFX canvas and writes text as the outlines of its letters.
 *
 * <p>JavaFX fills the outlines of scaled letters by the even-odd rule, which leaves holes where the
 * strokes of one letter overlap, as they do in the bundled typeface. Filled here by the non-zero
 * rule, letters come out as they do in every exported picture.
 */
final class OutlineGraphics extends FXGraphics2D {

    private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, true);

    OutlineGraphics(GraphicsContext context) {
        super(context);
    }

    @Override
    public void drawString(String text, float x, float y) {
        fill(getFont().createGlyphVector(SMOOTH, text).getOutline(x, y));
    }
}
