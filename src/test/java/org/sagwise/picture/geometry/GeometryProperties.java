package org.sagwise.picture.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Against the geometry of Java 2D, which answers the same questions. */
class GeometryProperties {

    @Property
    void line_meetingABox_isAsInJava2d(
            @ForAll @IntRange(min = -9, max = 9) int x1,
            @ForAll @IntRange(min = -9, max = 9) int y1,
            @ForAll @IntRange(min = -9, max = 9) int x2,
            @ForAll @IntRange(min = -9, max = 9) int y2,
            @ForAll @IntRange(min = 1, max = 5) int width,
            @ForAll @IntRange(min = 1, max = 5) int height) {
        Line line = new Line(x1, y1, x2, y2);
        Line2D awt = new Line2D.Double(x1, y1, x2, y2);
        assertEquals(
                awt.intersects(new Rectangle2D.Double(-2, -1, width, height)),
                line.meets(new Box(-2, -1, width, height)));
        assertEquals(awt.ptSegDist(3, 4), line.distance(3, 4), 1e-12);
    }

    @Property
    void box_besideAnother_isAsInJava2d(
            @ForAll @IntRange(min = -9, max = 9) int x,
            @ForAll @IntRange(min = -9, max = 9) int y,
            @ForAll @IntRange(min = 0, max = 9) int width,
            @ForAll @IntRange(min = 0, max = 9) int height) {
        Rectangle mine = new Rectangle(x, y, width, height);
        Rectangle fixed = new Rectangle(-3, -2, 6, 5);
        GridBox grid = new GridBox(x, y, width, height);
        GridBox other = new GridBox(-3, -2, 6, 5);
        Rectangle union = mine.union(fixed);
        assertEquals(mine.intersects(fixed), grid.intersects(other));
        assertEquals(mine.intersects(fixed), grid.box().intersects(other.box()));
        assertEquals(mine.contains(fixed), grid.box().contains(other.box()));
        assertEquals(fixed.contains(x, y), other.contains(x, y));
        assertEquals(new GridBox(union.x, union.y, union.width, union.height), grid.union(other));
        assertEquals(grid.union(other).box(), grid.box().union(other.box()));
    }

    @Property
    void point_turnedAndMoved_isAsInJava2d(
            @ForAll @IntRange(min = -3, max = 7) int quarters,
            @ForAll @IntRange(min = -9, max = 9) int x,
            @ForAll @IntRange(min = -9, max = 9) int y) {
        AffineTransform awt = AffineTransform.getTranslateInstance(3, -4);
        awt.quadrantRotate(quarters);
        Point2D expected = awt.transform(new Point2D.Double(x, y), null);
        Point found = new Point(x, y).turned(quarters).moved(3, -4);
        assertEquals(0, found.distance(new Point(expected.getX(), expected.getY())), 1e-12);
    }
}
