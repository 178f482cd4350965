package org.sagwise.picture.schematic;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.layout.Bearing;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;

/** Finds where lines are joined: three or more leave a point at which at least one ends. */
final class Junctions {

    private static final int FORK = 3;

    private final BenchLayout layout;

    private Junctions(BenchLayout layout) {
        this.layout = layout;
    }

    static List<GridPoint> of(BenchLayout layout) {
        Junctions junctions = new Junctions(layout);
        return junctions.ends().stream().filter(junctions::isFork).toList();
    }

    /** Where lines end, or part from others with which they have run together. */
    private Set<GridPoint> ends() {
        Set<GridPoint> ends = new LinkedHashSet<>();
        for (Conductor conductor : layout.conductors()) {
            List<GridPoint> points = conductor.points();
            if (conductor.isWire()) {
                ends.addAll(points);
            }
            ends.add(points.get(0));
            ends.add(points.get(points.size() - 1));
        }
        return ends;
    }

    private boolean isFork(GridPoint at) {
        Set<Bearing> ways = EnumSet.noneOf(Bearing.class);
        for (Conductor conductor : layout.conductors()) {
            for (int i = 1; i < conductor.points().size(); i++) {
                stretch(conductor.points().get(i - 1), conductor.points().get(i), at, ways);
            }
        }
        for (PartBox part : layout.parts()) {
            for (TerminalPoint terminal : part.terminals()) {
                if (terminal.x() == at.x() && terminal.y() == at.y()) {
                    ways.add(terminal.out().opposite());
                }
            }
        }
        return ways.size() >= FORK;
    }

    private static void stretch(GridPoint from, GridPoint to, GridPoint at, Set<Bearing> ways) {
        if (Line.between(from.point(), to.point()).distance(at.x(), at.y()) == 0) {
            for (GridPoint end : List.of(from, to)) {
                for (Bearing way : Bearing.values()) {
                    int along = (end.x() - at.x()) * way.dx() + (end.y() - at.y()) * way.dy();
                    if (along > 0) {
                        ways.add(way);
                    }
                }
            }
        }
    }
}
