package org.sagwise.picture.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;

/**
 * Some parts laid out together.
 *
 * @param spots where each part lies, by id
 * @param rooms the room that each of them takes, by id
 * @param entry where the way through the block begins
 * @param exit where it ends
 */
record Block(Map<String, Spot> spots, Map<String, GridBox> rooms, GridPoint entry, GridPoint exit) {

    GridBox bounds() {
        return rooms.values().stream().reduce(entry.box().union(exit.box()), GridBox::union);
    }

    boolean isEmpty() {
        return spots.isEmpty();
    }

    Block moved(int dx, int dy) {
        Map<String, Spot> movedSpots = new LinkedHashMap<>();
        spots.forEach((id, spot) -> movedSpots.put(id, spot.moved(dx, dy)));
        Map<String, GridBox> movedRooms = new LinkedHashMap<>();
        rooms.forEach((id, room) -> movedRooms.put(id, room.moved(dx, dy)));
        return new Block(movedSpots, movedRooms, entry.moved(dx, dy), exit.moved(dx, dy));
    }

    /** Parts of several blocks as one, with a way of its own. */
    static Block union(List<Block> blocks, GridPoint entry, GridPoint exit) {
        Map<String, Spot> spots = new LinkedHashMap<>();
        Map<String, GridBox> rooms = new LinkedHashMap<>();
        for (Block block : blocks) {
            spots.putAll(block.spots);
            rooms.putAll(block.rooms);
        }
        return new Block(spots, rooms, entry, exit);
    }

    static Block empty(GridPoint at) {
        return new Block(Map.of(), Map.of(), at, at);
    }
}
