package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.scenario.Part;

/**
 * Where a part lies.
 *
 * @param part the part
 * @param x its middle, from the left
 * @param y its middle, from the top
 * @param quarters how often it is turned by a quarter, clockwise, 0 to 3
 * @param body its outline
 * @param label the place of its figures
 * @param side where they stand
 * @param terminals its terminals, in the order of its kind
 */
public record PartBox(
        Part part,
        int x,
        int y,
        int quarters,
        GridBox body,
        GridBox label,
        LabelSide side,
        List<TerminalPoint> terminals) {

    public PartBox {
        terminals = List.copyOf(terminals);
    }

    static PartBox of(Part part, Spot spot, Footprint footprint, Sizes sizes) {
        List<TerminalPoint> terminals = sizes.shape(part.kind()).pins().stream()
                .map(pin -> pin.turned(spot.quarters()))
                .map(pin -> new TerminalPoint(
                        part.terminal(pin.terminal()), spot.x() + pin.dx(), spot.y() + pin.dy(), pin.out()))
                .toList();
        return new PartBox(
                part,
                spot.x(),
                spot.y(),
                spot.quarters(),
                footprint.body(),
                footprint.label(),
                footprint.side(),
                terminals);
    }

    /** Another part of the same kind in its place. */
    PartBox showing(Part other) {
        return other == part ? this : new PartBox(other, x, y, quarters, body, label, side, terminals);
    }

    public String id() {
        return part.id();
    }

    /** Where one of its terminals is. */
    public TerminalPoint terminal(String name) {
        return terminals.stream()
                .filter(point -> point.ref().terminal().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Whether it lies on its side, its terminals left and right where they were above and below.
     */
    public boolean isTurnedAside() {
        return quarters % 2 != 0;
    }
}
