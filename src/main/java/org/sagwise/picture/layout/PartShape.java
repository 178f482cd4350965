package org.sagwise.picture.layout;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridBox;

/**
 * Outline of a part of one kind before it is turned: the one place where sizes are set. Middles,
 * half sizes and pins are whole multiples of {@link #LATTICE}, so that conductors meet them.
 *
 * @param kind what part
 * @param halfWidth half its width
 * @param halfHeight half its height
 * @param axis the way from its first terminal to its second
 * @param pins where its terminals are, first terminal first
 */
public record PartShape(PartKind kind, int halfWidth, int halfHeight, Bearing axis, List<Pin> pins) {

    /** Bench units in one grid unit of the scenario file. */
    public static final int GRID = 40;

    /** Conductors run on a lattice of this spacing. */
    public static final int LATTICE = GRID / 2;

    private static final Map<PartKind, PartShape> SHAPES = new EnumMap<>(PartKind.class);

    /** Where symbols differ from the things they stand for. */
    private static final Map<PartKind, PartShape> SYMBOLS = new EnumMap<>(PartKind.class);

    static {
        add(PartKind.CELL, 40, 100, Bearing.DOWN, up("+", 0, 100), down("-", 0, 100), can());
        add(PartKind.COIL, 40, 60, Bearing.DOWN, up("1", 0, 60), down("2", 0, 60));
        add(PartKind.SWITCH, 60, 40, Bearing.RIGHT, left("1", 60), right("2", 60));
        add(PartKind.FUSE, 60, 20, Bearing.RIGHT, left("1", 60), right("2", 60));
        add(PartKind.PTC, 60, 40, Bearing.RIGHT, left("1", 60), right("2", 60));
        add(PartKind.REVERSE_GUARD, 60, 40, Bearing.RIGHT, left("in", 60), right("out", 60));
        add(PartKind.RESISTOR, 20, 60, Bearing.DOWN, up("1", 0, 60), down("2", 0, 60));
        add(PartKind.SUPPLY, 60, 60, Bearing.DOWN, up("+", 0, 60), down("-", 0, 60));
        add(PartKind.CHARGER, 60, 60, Bearing.DOWN, up("+", 0, 60), down("-", 0, 60));
        add(PartKind.METER, 60, 60, Bearing.RIGHT, down("red", -40, 60), down("black", 40, 60));
        add(
                PartKind.BOARD,
                80,
                60,
                Bearing.DOWN,
                new Pin("in+", -80, -40, Bearing.LEFT),
                new Pin("in-", -80, 40, Bearing.LEFT),
                new Pin("out+", 80, -40, Bearing.RIGHT),
                new Pin("out-", 80, 40, Bearing.RIGHT));
        SYMBOLS.putAll(SHAPES);
        symbol(
                PartKind.CELL,
                40,
                60,
                Bearing.DOWN,
                up("+", 0, 60),
                down("-", 0, 60),
                new Pin("can", 40, 20, Bearing.RIGHT));
        symbol(PartKind.COIL, 20, 60, Bearing.DOWN, up("1", 0, 60), down("2", 0, 60));
        symbol(PartKind.METER, 60, 40, Bearing.RIGHT, left("red", 60), right("black", 60));
    }

    public PartShape {
        pins = List.copyOf(pins);
    }

    /**
     * Where a terminal is before its part is turned.
     *
     * @param terminal its name
     * @param dx right of the middle
     * @param dy below the middle
     * @param out the way a conductor leaves it
     */
    public record Pin(String terminal, int dx, int dy, Bearing out) {

        /** This pin on a part turned by quarters clockwise. */
        Pin turned(int quarters) {
            Pin pin = this;
            for (int i = 0; i < Math.floorMod(quarters, 4); i++) {
                pin = new Pin(terminal, -pin.dy, pin.dx, pin.out.turned(1));
            }
            return pin;
        }
    }

    public static PartShape of(PartKind kind, Drawing drawing) {
        return (drawing == Drawing.BENCH ? SHAPES : SYMBOLS).get(kind);
    }

    /** Whether parts of this shape stay upright whatever their place in the circuit. */
    boolean staysUpright() {
        return pins.get(0).out() != axis.opposite();
    }

    Pin pin(String terminal, int quarters) {
        return pins.stream()
                .filter(pin -> pin.terminal().equals(terminal))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(kind + " has no " + terminal))
                .turned(quarters);
    }

    /** The outline of a part of this kind that lies at a spot. */
    GridBox body(Spot spot) {
        boolean onItsSide = spot.quarters() % 2 != 0;
        int halfX = onItsSide ? halfHeight : halfWidth;
        int halfY = onItsSide ? halfWidth : halfHeight;
        return new GridBox(spot.x() - halfX, spot.y() - halfY, 2 * halfX, 2 * halfY);
    }

    private static void add(PartKind kind, int halfX, int halfY, Bearing axis, Pin... pins) {
        SHAPES.put(kind, new PartShape(kind, halfX, halfY, axis, List.of(pins)));
    }

    private static void symbol(PartKind kind, int halfX, int halfY, Bearing axis, Pin... pins) {
        SYMBOLS.put(kind, new PartShape(kind, halfX, halfY, axis, List.of(pins)));
    }

    private static Pin up(String name, int dx, int distance) {
        return new Pin(name, dx, -distance, Bearing.UP);
    }

    private static Pin down(String name, int dx, int distance) {
        return new Pin(name, dx, distance, Bearing.DOWN);
    }

    private static Pin left(String name, int distance) {
        return new Pin(name, -distance, 0, Bearing.LEFT);
    }

    private static Pin right(String name, int distance) {
        return new Pin(name, distance, 0, Bearing.RIGHT);
    }

    private static Pin can() {
        return new Pin("can", 40, 40, Bearing.RIGHT);
    }
}
