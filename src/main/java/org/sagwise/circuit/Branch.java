package org.sagwise.circuit;

/**
 * A part that leads from one piece of metal to another.
 *
 * @param part id of the part
 * @param from the net it leads from: of a source its minus, of everything else its first terminal
 * @param to the net it leads to: of a source its plus
 */
public record Branch(String part, int from, int to) {

    /** The net at the other end. */
    public int across(int net) {
        return net == from ? to : from;
    }

    /** Whether both its ends are the same piece of metal. */
    public boolean isShorted() {
        return from == to;
    }

    /** Whether it leads between the same two nets, either way round. */
    public boolean isBeside(Branch other) {
        return (from == other.from && to == other.to) || (from == other.to && to == other.from);
    }
}
