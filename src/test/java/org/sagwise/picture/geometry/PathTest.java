package org.sagwise.picture.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.picture.pen.Colour;
import org.sagwise.report.pen.SvgPen;

class PathTest {

    @Test
    void build_byPlacesThatAreNoNumber_leavesThemOut() {
        assertEquals("M1 1L2 2L4 4", steps(Path.line(1, 1, 2, 2, Double.NaN, 3, 4, 4)));
        assertEquals("M2 2L3 3", steps(Path.line(Double.NaN, 1, 2, 2, 3, 3)));
        assertFalse(Path.line(1, 1, 2, Double.POSITIVE_INFINITY).isDrawable());
        assertFalse(Path.polygon(Double.NaN, Double.NaN, Double.NaN, 0).isDrawable());
    }

    @Test
    void append_anotherPath_keepsBothPieces() {
        Path.Builder path = new Path.Builder();
        path.moveTo(0, 0);
        path.quadTo(1, 0, 1, 1);
        path.curveTo(1, 2, 3, 4, 5, 6);
        assertEquals(
                "M0 0Q1 0 1 1C1 2 3 4 5 6M7 7L8 8L7 8Z",
                steps(path.append(Path.polygon(7, 7, 8, 8, 7, 8)).build()));
    }

    private static String steps(Path path) {
        assertTrue(path.isDrawable());
        SvgPen pen = new SvgPen(3);
        pen.fill(path, Colour.BLACK);
        String svg = pen.svg(1, 1, "", "");
        return svg.substring(svg.indexOf("d=\"") + 3, svg.indexOf("\" fill=\"#000000\""));
    }
}
