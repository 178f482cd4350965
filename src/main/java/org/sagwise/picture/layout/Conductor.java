package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridPoint;

/**
 * A stretch of conductor on which the current is everywhere the same. A wire is one; plates that
 * join more than two terminals are several, and a stretch then carries the currents of several
 * links.
 *
 * @param points its corners, at least two
 * @param shares the links whose current it carries
 * @param isWire whether it is a jumper; else it is a plate of touching or ideal joints
 * @param sharedStart length at its start that it has in common with another conductor
 * @param sharedEnd length at its end that it has in common with another conductor
 */
public record Conductor(List<GridPoint> points, List<Share> shares, boolean isWire, int sharedStart, int sharedEnd) {

    public Conductor {
        points = List.copyOf(points);
        shares = List.copyOf(shares);
    }

    /**
     * A link on a conductor.
     *
     * @param link its place in the scenario
     * @param sign 1 if the link runs the way of the conductor's points, -1 if against it
     */
    public record Share(int link, int sign) {}

    public boolean carries(int link) {
        return shares.stream().anyMatch(share -> share.link() == link);
    }

    /** Length along its corners. */
    public double length() {
        return GridPoint.along(points);
    }
}
