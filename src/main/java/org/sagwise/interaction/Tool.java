package org.sagwise.interaction;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;

/** What is in the hand. Lengths in bench units. */
public sealed interface Tool {

    /** Nothing: a click chooses. */
    record Nothing() implements Tool {}

    /**
     * A part from the shelf that does not lie on the bench yet.
     *
     * @param part as it will lie there, its id not taken
     * @param quarters how it is turned
     * @param x its middle
     * @param y its middle
     */
    record Fresh(Part part, int quarters, int x, int y) implements Tool {}

    /**
     * Parts that are lifted off the bench.
     *
     * @param ids which
     * @param grabX where they were taken hold of
     * @param grabY where they were taken hold of
     * @param dx how far they are held to the right of where they lay
     * @param dy how far below
     */
    record Lifted(Set<String> ids, double grabX, double grabY, int dx, int dy) implements Tool {}

    /**
     * A note that is lifted off the bench.
     *
     * @param note its place in the scenario
     * @param grabX where it was taken hold of
     * @param grabY where it was taken hold of
     * @param dx how far it is held to the right of where it lay
     * @param dy how far below
     */
    record Slip(int note, double grabX, double grabY, double dx, double dy) implements Tool {}

    /**
     * The free end of a joint that begins at a terminal.
     *
     * @param from where it begins
     * @param x where its free end is
     * @param y where its free end is
     * @param over the terminal that it would be joined to
     * @param pulled the joint that is there already and whose other end this is; empty for a new one
     */
    record DraftLink(TerminalRef from, double x, double y, Optional<TerminalRef> over, Optional<Pulled> pulled)
            implements Tool {}

    /**
     * The end of a joint that is pulled off its terminal.
     *
     * @param link its place in the scenario
     * @param end the terminal that it leaves
     */
    record Pulled(int link, TerminalRef end) {}

    /**
     * Terminals that are collected to be joined by one plate.
     *
     * @param terminals in the order in which they came; at least one
     * @param over the terminal that would be the last of them
     */
    record Gathered(List<TerminalRef> terminals, Optional<TerminalRef> over) implements Tool {

        public Gathered {
            terminals = List.copyOf(terminals);
        }

        /** With the terminal that the hand is over. */
        public List<TerminalRef> all() {
            return Stream.concat(terminals.stream(), over.stream()).distinct().toList();
        }
    }

    /**
     * A probe of the meter.
     *
     * @param probe which
     * @param x where its tip is
     * @param y where its tip is
     * @param over the terminal that it would rest on
     */
    record Tip(Probe probe, double x, double y, Optional<TerminalRef> over) implements Tool {}

    /** A frame drawn around parts to choose them; {@code kept} were chosen before. */
    record Frame(double fromX, double fromY, double x, double y, Set<String> kept) implements Tool {}

    /** The two probes of the meter. */
    enum Probe {
        RED,
        BLACK
    }

    Tool NOTHING = new Nothing();
}
