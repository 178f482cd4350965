package org.sagwise.hazard;

import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.touch;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Circuits to which nobody would object: rows of equal cells side by side, adequate wire, a button,
 * a coil that asks at most some 6 A of each cell, and, if wanted, a fuse, a board and a voltmeter.
 *
 * @param inSeries cells in each row
 * @param sideBySide rows side by side
 * @param charge charge of every cell
 * @param contactMohm contact at every cell, mΩ; that of the whole pack has as many of them side by side as rows
 * @param wired whether jumpers join the packs, else contacts
 * @param fused whether a fuse guards the pack
 * @param regulated whether a board feeds the coil
 * @param measured whether a voltmeter hangs across the coil
 */
record SoundCircuits(
        int inSeries,
        int sideBySide,
        double charge,
        double contactMohm,
        boolean wired,
        boolean fused,
        boolean regulated,
        boolean measured) {

    /** Current asked of each cell, A, at 3.6 V: well within 80 % of 20 A. */
    private static final double CELL_A = 6;

    Scenario build() {
        List<Part> parts = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int row = 0; row < sideBySide; row++) {
            addRow(row, parts, links);
        }
        String plus = id(0, inSeries - 1) + ".+";
        String minus = id(0, 0) + ".-";
        parts.add(Part.of("fire", PartKind.SWITCH));
        if (fused) {
            double ratingA = Math.min(10 * sideBySide, 30);
            parts.add(Part.of("F1", PartKind.FUSE, "rating_A", ratingA));
            links.add(touch(plus, "F1.1", trunkMohm()));
            plus = "F1.2";
        }
        links.add(wired ? jumper(plus, "fire.1", 12, 60) : touch(plus, "fire.1", trunkMohm()));
        addLoad("fire.2", minus, parts, links);
        return Scenario.of("Sound", parts, links);
    }

    /** A joint that carries what all rows give is as much better as its current is larger, or it would get hot. */
    private double trunkMohm() {
        return contactMohm / sideBySide;
    }

    private void addRow(int row, List<Part> parts, List<Link> links) {
        for (int i = 0; i < inSeries; i++) {
            parts.add(cell(id(row, i)));
            if (i > 0) {
                links.add(touch(id(row, i - 1) + ".+", id(row, i) + ".-", contactMohm));
            }
        }
        if (row > 0) {
            links.add(joint(id(0, 0) + ".-", id(row, 0) + ".-"));
            links.add(joint(id(0, inSeries - 1) + ".+", id(row, inSeries - 1) + ".+"));
        }
    }

    private Link joint(String from, String to) {
        return wired ? jumper(from, to, 14, 40) : touch(from, to, contactMohm);
    }

    private void addLoad(String plus, String minus, List<Part> parts, List<Link> links) {
        double ohm = 3.6 * inSeries / (CELL_A * sideBySide);
        String from = plus;
        String to = minus;
        if (regulated) {
            double powerW = 3.6 * inSeries * CELL_A * sideBySide * 0.8;
            parts.add(Part.of("board", PartKind.BOARD, "power_W", powerW));
            links.add(ideal(plus, "board.in+"));
            links.add(ideal("board.in-", minus));
            from = "board.out+";
            to = "board.out-";
        }
        parts.add(Part.of("coil", PartKind.COIL, "ohm", ohm, "limit_W", 500));
        links.add(ideal(from, "coil.1"));
        links.add(ideal("coil.2", to));
        if (measured) {
            parts.add(Part.of("M1", PartKind.METER));
            links.add(ideal("M1.red", "coil.1"));
            links.add(ideal("M1.black", "coil.2"));
        }
    }

    private Part cell(String id) {
        return Part.of(id, PartKind.CELL, "charge", charge, "internal_mohm", 20, "capacity_mAh", 2500, "limit_A", 20);
    }

    private static String id(int row, int inRow) {
        return "" + (char) ('A' + row) + (inRow + 1);
    }
}
