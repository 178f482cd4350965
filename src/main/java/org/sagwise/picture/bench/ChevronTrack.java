package org.sagwise.picture.bench;

import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.Conductor;

/** Places along one conductor at which chevrons can stand, worked out once. */
final class ChevronTrack {

    /** Distance from one chevron to the next, bench units. */
    static final double SPACING = 34;

    private static final double GRAIN = 2;
    private static final double BETWEEN = 14;

    private final Conductor conductor;
    private final float[] places;
    private final double begin;
    private final double end;
    private final double half;
    private final double spacing;
    private double offset;

    ChevronTrack(Conductor conductor, double width, double radius, double spacing) {
        this.spacing = spacing;
        this.conductor = conductor;
        this.places = evenPlaces(SoftPath.points(conductor.points(), radius));
        this.half = Math.max(4, Math.min(6.5, 0.42 * width + 1.5));
        double length = GRAIN * (places.length / 4 - 1);
        this.begin = conductor.sharedStart() + half;
        this.end = length - conductor.sharedEnd() - half;
        this.offset = spacing / 2;
    }

    Conductor conductor() {
        return conductor;
    }

    /** Moves the chevrons along the conductor's points; negative is against them. */
    void drift(double distance) {
        offset = Math.floorMod((long) Math.floor((offset + distance) * 1024), (long) (spacing * 1024)) / 1024.0;
    }

    /** Adds every chevron of this conductor to a path, but those that lie under a tag. */
    void addTo(Path.Builder marks, boolean forward, List<Box> tags) {
        if (end - begin < BETWEEN) {
            return;
        }
        double first = begin + Math.floorMod((long) ((offset - begin) * 16), (long) (spacing * 16)) / 16.0;
        for (double at = first; at <= end; at += spacing) {
            int place = 4 * Math.min(places.length / 4 - 1, (int) Math.round(at / GRAIN));
            if (tags.isEmpty() || !isUnder(tags, place)) {
                mark(marks, place, forward ? 1 : -1);
            }
        }
    }

    private boolean isUnder(List<Box> tags, int place) {
        Box mark = new Box(places[place], places[place + 1], 0, 0).grown(half);
        return tags.stream().anyMatch(mark::intersects);
    }

    private void mark(Path.Builder marks, int place, int way) {
        double x = places[place];
        double y = places[place + 1];
        double dx = way * places[place + 2];
        double dy = way * places[place + 3];
        double tipX = x + 0.55 * half * dx;
        double tipY = y + 0.55 * half * dy;
        marks.moveTo(tipX - half * dx - half * dy, tipY - half * dy + half * dx);
        marks.lineTo(tipX, tipY);
        marks.lineTo(tipX - half * dx + half * dy, tipY - half * dy - half * dx);
    }

    /** x, y and direction at even distances, one after the other. */
    private static float[] evenPlaces(List<Point> way) {
        double length = 0;
        for (int i = 1; i < way.size(); i++) {
            length += way.get(i - 1).distance(way.get(i));
        }
        int count = (int) (length / GRAIN) + 1;
        float[] places = new float[4 * count];
        int piece = 1;
        double passed = 0;
        for (int i = 0; i < count; i++) {
            double at = i * GRAIN;
            while (piece < way.size() - 1 && passed + way.get(piece - 1).distance(way.get(piece)) < at) {
                passed += way.get(piece - 1).distance(way.get(piece));
                piece++;
            }
            put(places, 4 * i, way.get(piece - 1), way.get(piece), at - passed);
        }
        return places;
    }

    private static void put(float[] places, int at, Point from, Point to, double distance) {
        double stretch = Math.max(1e-9, from.distance(to));
        double dx = (to.x() - from.x()) / stretch;
        double dy = (to.y() - from.y()) / stretch;
        places[at] = (float) (from.x() + distance * dx);
        places[at + 1] = (float) (from.y() + distance * dy);
        places[at + 2] = (float) dx;
        places[at + 3] = (float) dy;
    }
}
