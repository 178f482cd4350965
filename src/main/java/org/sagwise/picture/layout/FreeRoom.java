package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;

/** Finds room on the bench for what is written on it, clear of parts, figures and conductors. */
final class FreeRoom {

    private static final int MARGIN = 10;
    private static final int RINGS = 24;
    private static final int CONDUCTOR = 8;

    /** A note that was laid where there is no room is looked for a place this far around. */
    private static final int RINGS_AROUND = 40;

    /** A line across something is as bad as so much more distance. */
    private static final double ACROSS_PART = 320;

    private static final double ACROSS_CONDUCTOR = 40;

    /** Leads go round parts by themselves, and across conductors without harm. */
    private static final double LEAD_ACROSS_PART = 120;

    private static final double LEAD_ACROSS_CONDUCTOR = 20;

    private final List<Rectangle> taken = new ArrayList<>();

    /** How many of the taken areas are parts and figures; they come first. */
    private final int solid;

    FreeRoom(List<PartBox> parts, List<LinkRoute> routes) {
        parts.forEach(part -> taken.add(part.body()));
        parts.forEach(part -> taken.add(part.label()));
        solid = taken.size();
        routes.forEach(route -> take(route.points()));
    }

    private void take(List<Point> way) {
        for (int i = 1; i < way.size(); i++) {
            Rectangle stretch = new Rectangle(way.get(i - 1));
            stretch.add(way.get(i));
            stretch.grow(CONDUCTOR, CONDUCTOR);
            taken.add(stretch);
        }
    }

    /**
     * Takes room of a size near some points, best where straight lines from its middle to them
     * cross little.
     */
    Rectangle take(List<Point> targets, int width, int height) {
        return take(targets, (near, offset) -> beside(near, offset, width, height), ACROSS_PART, ACROSS_CONDUCTOR);
    }

    /** Takes room for something on leads, near the points to which they go. */
    Rectangle takeOnLeads(List<Point> targets, int width, int height) {
        return take(
                targets,
                (near, offset) ->
                        new Rectangle(near.x + offset.x - width / 2, near.y + offset.y - height / 2, width, height),
                LEAD_ACROSS_PART,
                LEAD_ACROSS_CONDUCTOR);
    }

    private Rectangle take(List<Point> targets, Rooms rooms, double acrossPart, double acrossConductor) {
        Point near = middle(targets);
        Rectangle best = null;
        double least = Double.MAX_VALUE;
        for (int ring = 1; ring < RINGS && ring * PartShape.LATTICE < least; ring++) {
            for (Point offset : ring(ring * PartShape.LATTICE)) {
                Rectangle room = rooms.at(near, offset);
                double far = near.distance(room.getCenterX(), room.getCenterY());
                if (far < least && isFree(room)) {
                    double cost = far + crossings(room, targets, acrossPart, acrossConductor);
                    best = cost < least ? room : best;
                    least = Math.min(cost, least);
                }
            }
        }
        Rectangle size = rooms.at(near, new Point());
        Rectangle found = best == null ? below(near, size.width, size.height) : best;
        taken.add(found);
        return found;
    }

    /** Where a room lies that is this far from a point. */
    private interface Rooms {
        Rectangle at(Point near, Point offset);
    }

    /** Takes a room, or the free one of its size that is nearest to it. */
    Rectangle takeNear(Rectangle wished) {
        Rectangle best = wished;
        double least = isFree(wished) ? 0 : Double.MAX_VALUE;
        for (int ring = 1; ring <= RINGS_AROUND && ring * PartShape.LATTICE < least; ring++) {
            for (Point offset : ring(ring * PartShape.LATTICE)) {
                Rectangle room = new Rectangle(wished);
                room.translate(offset.x, offset.y);
                double far = Math.hypot(offset.x, offset.y);
                if (far < least && isFree(room)) {
                    best = room;
                    least = far;
                }
            }
        }
        taken.add(best);
        return best;
    }

    private static Point middle(List<Point> points) {
        int x = 0;
        int y = 0;
        for (Point point : points) {
            x += point.x;
            y += point.y;
        }
        return new Point(x / points.size(), y / points.size());
    }

    private double crossings(Rectangle room, List<Point> targets, double acrossPart, double acrossConductor) {
        double cost = 0;
        for (Point target : targets) {
            for (int i = 0; i < taken.size(); i++) {
                Rectangle area = taken.get(i);
                boolean own = area.contains(target);
                if (!own && area.intersectsLine(room.getCenterX(), room.getCenterY(), target.x, target.y)) {
                    cost += i < solid ? acrossPart : acrossConductor;
                }
            }
        }
        return cost;
    }

    private static List<Point> ring(int far) {
        List<Point> offsets = new ArrayList<>();
        for (int along = -far; along <= far; along += PartShape.LATTICE) {
            offsets.add(new Point(far, along));
            offsets.add(new Point(-far, along));
            offsets.add(new Point(along, far));
            offsets.add(new Point(along, -far));
        }
        return offsets;
    }

    private static Rectangle beside(Point near, Point offset, int width, int height) {
        int x = near.x + offset.x - (offset.x < 0 ? width : 0);
        int y = near.y + offset.y - (offset.y < 0 ? height : 0);
        return new Rectangle(x, y, width, height);
    }

    private boolean isFree(Rectangle room) {
        Rectangle grown = new Rectangle(room);
        grown.grow(MARGIN, MARGIN);
        return taken.stream().noneMatch(grown::intersects);
    }

    private Rectangle below(Point near, int width, int height) {
        int lowest = taken.stream().mapToInt(area -> area.y + area.height).max().orElse(0);
        return new Rectangle(near.x - width / 2, lowest + MARGIN, width, height);
    }
}
