package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Some parts laid out together.
 *
 * @param spots where each part lies, by id
 * @param rooms the room that each of them takes, by id
 * @param entry where the way through the block begins
 * @param exit where it ends
 */
record Block(Map<String, Spot> spots, Map<String, Rectangle> rooms, Point entry, Point exit) {

    Rectangle bounds() {
        Rectangle bounds = new Rectangle(entry);
        bounds.add(exit);
        rooms.values().forEach(bounds::add);
        return bounds;
    }

    boolean isEmpty() {
        return spots.isEmpty();
    }

    Block moved(int dx, int dy) {
        Map<String, Spot> movedSpots = new LinkedHashMap<>();
        spots.forEach((id, spot) -> movedSpots.put(id, spot.moved(dx, dy)));
        Map<String, Rectangle> movedRooms = new LinkedHashMap<>();
        rooms.forEach((id, room) -> movedRooms.put(id, translated(room, dx, dy)));
        return new Block(movedSpots, movedRooms, translated(entry, dx, dy), translated(exit, dx, dy));
    }

    /** Parts of several blocks as one, with a way of its own. */
    static Block union(List<Block> blocks, Point entry, Point exit) {
        Map<String, Spot> spots = new LinkedHashMap<>();
        Map<String, Rectangle> rooms = new LinkedHashMap<>();
        for (Block block : blocks) {
            spots.putAll(block.spots);
            rooms.putAll(block.rooms);
        }
        return new Block(spots, rooms, entry, exit);
    }

    static Block empty(Point at) {
        return new Block(Map.of(), Map.of(), at, at);
    }

    /** Whether any room of one lies over any room of the other. */
    boolean overlaps(Block other) {
        List<Rectangle> theirs = new ArrayList<>(other.rooms.values());
        return rooms.values().stream().anyMatch(mine -> theirs.stream().anyMatch(mine::intersects));
    }

    private static Rectangle translated(Rectangle old, int dx, int dy) {
        Rectangle copy = new Rectangle(old);
        copy.translate(dx, dy);
        return copy;
    }

    private static Point translated(Point old, int dx, int dy) {
        return new Point(old.x + dx, old.y + dy);
    }
}
