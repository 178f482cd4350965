package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;

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

    private final List<GridBox> taken = new ArrayList<>();

    /** How many of the taken areas are parts and figures; they come first. */
    private final int solid;

    FreeRoom(List<PartBox> parts, List<LinkRoute> routes) {
        parts.forEach(part -> taken.add(part.body()));
        parts.forEach(part -> taken.add(part.label()));
        solid = taken.size();
        routes.forEach(route -> take(route.points()));
    }

    private void take(List<GridPoint> way) {
        for (int i = 1; i < way.size(); i++) {
            taken.add(way.get(i - 1).box().union(way.get(i).box()).grown(CONDUCTOR));
        }
    }

    /**
     * Takes room of a size near some points, best where straight lines from its middle to them
     * cross little.
     */
    GridBox take(List<GridPoint> targets, int width, int height) {
        return take(targets, (near, offset) -> beside(near, offset, width, height), ACROSS_PART, ACROSS_CONDUCTOR);
    }

    /** Takes room for something on leads, near the points to which they go. */
    GridBox takeOnLeads(List<GridPoint> targets, int width, int height) {
        return take(
                targets,
                (near, offset) -> new GridBox(
                        near.x() + offset.x() - width / 2, near.y() + offset.y() - height / 2, width, height),
                LEAD_ACROSS_PART,
                LEAD_ACROSS_CONDUCTOR);
    }

    private GridBox take(List<GridPoint> targets, Rooms rooms, double acrossPart, double acrossConductor) {
        GridPoint near = middle(targets);
        GridBox best = null;
        double least = Double.MAX_VALUE;
        for (int ring = 1; ring < RINGS && ring * PartShape.LATTICE < least; ring++) {
            for (GridPoint offset : ring(ring * PartShape.LATTICE)) {
                GridBox room = rooms.at(near, offset);
                double far = near.point().distance(room.box().middle());
                if (far < least && isFree(room)) {
                    double cost = far + crossings(room, targets, acrossPart, acrossConductor);
                    best = cost < least ? room : best;
                    least = Math.min(cost, least);
                }
            }
        }
        GridBox size = rooms.at(near, new GridPoint(0, 0));
        GridBox found = best == null ? below(near, size.width(), size.height()) : best;
        taken.add(found);
        return found;
    }

    /** Where a room lies that is this far from a point. */
    private interface Rooms {
        GridBox at(GridPoint near, GridPoint offset);
    }

    /** Takes a room, or the free one of its size that is nearest to it. */
    GridBox takeNear(GridBox wished) {
        GridBox best = wished;
        double least = isFree(wished) ? 0 : Double.MAX_VALUE;
        for (int ring = 1; ring <= RINGS_AROUND && ring * PartShape.LATTICE < least; ring++) {
            for (GridPoint offset : ring(ring * PartShape.LATTICE)) {
                GridBox room = wished.moved(offset.x(), offset.y());
                double far = Math.hypot(offset.x(), offset.y());
                if (far < least && isFree(room)) {
                    best = room;
                    least = far;
                }
            }
        }
        taken.add(best);
        return best;
    }

    private static GridPoint middle(List<GridPoint> points) {
        int x = 0;
        int y = 0;
        for (GridPoint point : points) {
            x += point.x();
            y += point.y();
        }
        return new GridPoint(x / points.size(), y / points.size());
    }

    private double crossings(GridBox room, List<GridPoint> targets, double acrossPart, double acrossConductor) {
        double cost = 0;
        for (GridPoint target : targets) {
            for (int i = 0; i < taken.size(); i++) {
                GridBox area = taken.get(i);
                boolean own = area.contains(target.x(), target.y());
                if (!own && Line.between(room.box().middle(), target.point()).meets(area.box())) {
                    cost += i < solid ? acrossPart : acrossConductor;
                }
            }
        }
        return cost;
    }

    private static List<GridPoint> ring(int far) {
        List<GridPoint> offsets = new ArrayList<>();
        for (int along = -far; along <= far; along += PartShape.LATTICE) {
            offsets.add(new GridPoint(far, along));
            offsets.add(new GridPoint(-far, along));
            offsets.add(new GridPoint(along, far));
            offsets.add(new GridPoint(along, -far));
        }
        return offsets;
    }

    private static GridBox beside(GridPoint near, GridPoint offset, int width, int height) {
        int x = near.x() + offset.x() - (offset.x() < 0 ? width : 0);
        int y = near.y() + offset.y() - (offset.y() < 0 ? height : 0);
        return new GridBox(x, y, width, height);
    }

    private boolean isFree(GridBox room) {
        GridBox grown = room.grown(MARGIN);
        for (GridBox area : taken) {
            if (grown.intersects(area)) {
                return false;
            }
        }
        return true;
    }

    private GridBox below(GridPoint near, int width, int height) {
        int lowest =
                taken.stream().mapToInt(area -> area.y() + area.height()).max().orElse(0);
        return new GridBox(near.x() - width / 2, lowest + MARGIN, width, height);
    }
}
