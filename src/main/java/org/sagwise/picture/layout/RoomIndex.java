package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;

/** Taken rooms by the squares of the bench that they touch, so that few need be looked at. */
final class RoomIndex {

    private static final int SQUARE = 512;

    private final Map<Long, List<GridBox>> squares = new HashMap<>();
    private int lowest;

    void add(GridBox room) {
        lowest = Math.max(lowest, room.y() + room.height());
        for (long square : squaresOf(room)) {
            squares.computeIfAbsent(square, key -> new ArrayList<>()).add(room);
        }
    }

    boolean isFree(GridBox room) {
        for (long square : squaresOf(room)) {
            for (GridBox taken : squares.getOrDefault(square, List.of())) {
                if (taken.intersects(room)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Lower edge of the lowest room; 0 if all lie above. */
    int lowest() {
        return lowest;
    }

    private static List<Long> squaresOf(GridBox room) {
        List<Long> found = new ArrayList<>();
        int lastX = Math.floorDiv(room.x() + room.width(), SQUARE);
        int lastY = Math.floorDiv(room.y() + room.height(), SQUARE);
        for (int x = Math.floorDiv(room.x(), SQUARE); x <= lastX; x++) {
            for (int y = Math.floorDiv(room.y(), SQUARE); y <= lastY; y++) {
                found.add((long) x << 32 | y & 0xFFFFFFFFL);
            }
        }
        return found;
    }
}
