package org.sagwise.picture.layout;

import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.touch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.Packs;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Benches of every shape that the layout has to cope with, by name. */
public final class Benches {

    private Benches() {}

    /** All of them. */
    public static Map<String, Scenario> all() {
        Map<String, Scenario> benches = new LinkedHashMap<>();
        benches.put("single", Circuits.single(full("A"), 0.5));
        for (int count = 2; count <= 4; count++) {
            benches.put("parallel-" + count, Circuits.parallel(1, cells(count)));
            benches.put("series-" + count, Circuits.series(2, cells(count)));
        }
        benches.put("parallel-2-reversed", Circuits.turned(benches.get("parallel-2"), "B"));
        benches.put("series-2-reversed", Circuits.turned(benches.get("series-2"), "B"));
        benches.put("series-3-reversed", Circuits.turned(benches.get("series-3"), "B"));
        benches.put("wired-parallel-2", wiredPair());
        benches.put("2s2p", Packs.of(2, 2));
        benches.put("2s3p", Packs.of(3, 2));
        benches.put("3s2p", Packs.of(2, 3));
        benches.put("groups-in-a-row", groupsInARow());
        benches.put("fused", fused());
        benches.put("fused-cells", fusedCells());
        benches.put("board", board(Circuits.cell("A", 4.2, 15)));
        benches.put("board-on-two", boardOnTwo());
        benches.put("two-coils", twoCoils());
        benches.put("charger", charger());
        benches.put("supply", supply());
        benches.put("meters", meters());
        benches.put("bypassed", bypassed());
        benches.put("torn", torn());
        benches.put("open", open());
        benches.put("unjoined", Circuits.single(full("A"), 1).withLinks(List.of()));
        benches.put("bridge", bridge());
        benches.put("empty", Scenario.empty());
        return benches;
    }

    /** A pack that takes a hundred parts. */
    public static Scenario hundred() {
        return Packs.of(14, 7);
    }

    private static Part full(String id) {
        return cell(id, 4.2, 15);
    }

    private static Part[] cells(int count) {
        Part[] cells = new Part[count];
        for (int i = 0; i < count; i++) {
            cells[i] = full(String.valueOf((char) ('A' + i)));
        }
        return cells;
    }

    private static Scenario wiredPair() {
        return Scenario.of(
                        "Two cells side by side",
                        List.of(full("A"), full("B"), Circuits.button(3), Circuits.coil(1)),
                        List.of(
                                touch("A.+", "B.+", 2),
                                jumper("A.+", "fire.1", 16, 60),
                                jumper("fire.2", "coil.1", 16, 40),
                                jumper("coil.2", "A.-", 16, 80),
                                touch("A.-", "B.-", 2)))
                .pressed();
    }

    private static Scenario groupsInARow() {
        return Scenario.of(
                        "Two groups of two in a row",
                        List.of(full("A"), full("B"), full("C"), full("D"), Circuits.button(3), Circuits.coil(2)),
                        List.of(
                                touch("A.+", "B.+", 2),
                                touch("A.-", "B.-", 2),
                                touch("C.+", "D.+", 2),
                                touch("C.-", "D.-", 2),
                                jumper("A.+", "C.-", 14, 40),
                                jumper("C.+", "fire.1", 16, 40),
                                jumper("fire.2", "coil.1", 16, 40),
                                jumper("coil.2", "A.-", 16, 80)))
                .pressed();
    }

    private static Scenario fused() {
        List<Part> parts = List.of(
                full("A"),
                Part.of("fuse", PartKind.FUSE, "rating_A", 15, "mohm", 4),
                Circuits.button(3),
                Circuits.coil(0.5),
                Part.of("tail", PartKind.RESISTOR, "ohm", 0.05),
                Part.of("meter", PartKind.METER, "mode", "amps"));
        return Scenario.of(
                        "Fuse, button, coil, resistor and ammeter",
                        parts,
                        List.of(
                                jumper("A.+", "fuse.1", 16, 40),
                                jumper("fuse.2", "fire.1", 16, 40),
                                jumper("fire.2", "coil.1", 16, 40),
                                jumper("coil.2", "tail.1", 16, 40),
                                jumper("tail.2", "meter.red", 16, 40),
                                jumper("meter.black", "A.-", 16, 40)))
                .pressed();
    }

    private static Scenario fusedCells() {
        return Scenario.of(
                        "Each cell with its fuse",
                        List.of(
                                full("A"),
                                full("B"),
                                Part.of("fuseA", PartKind.FUSE, "rating_A", 15, "mohm", 4),
                                Part.of("fuseB", PartKind.FUSE, "rating_A", 15, "mohm", 4),
                                Circuits.coil(0.5)),
                        List.of(
                                touch("A.+", "fuseA.1", 2),
                                touch("B.+", "fuseB.1", 2),
                                ideal("fuseA.2", "fuseB.2"),
                                ideal("A.-", "B.-"),
                                jumper("fuseB.2", "coil.1", 16, 40),
                                jumper("coil.2", "B.-", 16, 40)))
                .pressed();
    }

    private static Part boardPart() {
        return Part.of(
                "board",
                PartKind.BOARD,
                "power_W",
                30,
                "efficiency",
                0.92,
                "cutoff_V",
                3.0,
                "max_input_A",
                18,
                "out_min_V",
                0.5,
                "out_max_V",
                8);
    }

    private static Scenario board(Part cell) {
        return Scenario.of(
                        "A regulated board",
                        List.of(cell, Circuits.button(3), boardPart(), Circuits.coil(0.8)),
                        List.of(
                                jumper("A.+", "fire.1", 16, 50),
                                jumper("fire.2", "board.in+", 16, 20),
                                jumper("board.in-", "A.-", 16, 60),
                                jumper("board.out+", "coil.1", 16, 30),
                                jumper("coil.2", "board.out-", 16, 30)))
                .pressed();
    }

    private static Scenario boardOnTwo() {
        return Scenario.of(
                        "A board on two in a row",
                        List.of(full("A"), full("B"), boardPart(), Circuits.coil(0.8)),
                        List.of(
                                touch("A.+", "B.-", 4),
                                jumper("B.+", "board.in+", 16, 20),
                                jumper("board.in-", "A.-", 16, 60),
                                jumper("board.out+", "coil.1", 16, 30),
                                jumper("coil.2", "board.out-", 16, 30)))
                .pressed();
    }

    private static Scenario twoCoils() {
        return Scenario.of(
                        "Two coils side by side",
                        List.of(
                                full("A"),
                                Circuits.button(3),
                                Part.of("left", PartKind.COIL, "ohm", 0.4),
                                Part.of("right", PartKind.COIL, "ohm", 0.4)),
                        List.of(
                                jumper("A.+", "fire.1", 16, 50),
                                jumper("fire.2", "left.1", 16, 20),
                                touch("left.1", "right.1", 3),
                                touch("left.2", "right.2", 3),
                                jumper("right.2", "A.-", 16, 60)))
                .pressed();
    }

    private static Scenario charger() {
        return Scenario.of(
                "Charging",
                List.of(cell("A", 3.6, 20), Part.of("charger", PartKind.CHARGER, "current_A", 0.5)),
                List.of(jumper("charger.+", "A.+", 20, 30), jumper("A.-", "charger.-", 20, 30)));
    }

    private static Scenario supply() {
        return Scenario.of(
                        "Bench supply",
                        List.of(
                                Part.of("supply", PartKind.SUPPLY, "volts", 5),
                                Circuits.button(3),
                                Part.of("load", PartKind.RESISTOR, "ohm", 10)),
                        List.of(
                                jumper("supply.+", "fire.1", 20, 300),
                                jumper("fire.2", "load.1", 20, 30),
                                jumper("load.2", "supply.-", 20, 300)))
                .pressed();
    }

    private static Scenario meters() {
        Scenario single = Circuits.single(full("A"), 0.5);
        return single.plus(Part.of("volts", PartKind.METER, "mode", "volts"))
                .plus(jumper("volts.red", "coil.1", 20, 400))
                .plus(jumper("volts.black", "coil.2", 20, 400))
                .withNotes(List.of(Note.of("volts", "Volts across the coil while it is fired")));
    }

    private static Scenario bypassed() {
        return Circuits.single(full("A"), 0.5)
                .plus(Link.of(touch("coil.1", "coil.2", 6).keys().with("id", "clip")))
                .withNotes(List.of(Note.of("clip", "A paper clip, bent open")));
    }

    private static Scenario torn() {
        return Scenario.of(
                "Two torn wraps touch",
                List.of(
                        full("A").with("wrap", "torn"),
                        full("B").with("wrap", "torn"),
                        Circuits.button(3),
                        Circuits.coil(2)),
                List.of(
                        jumper("A.+", "fire.1", 16, 60),
                        touch("A.-", "B.+", 4),
                        jumper("fire.2", "coil.1", 16, 40),
                        jumper("coil.2", "B.-", 16, 80),
                        touch("A.can", "B.can", 15)));
    }

    private static Scenario open() {
        Scenario single = Circuits.single(full("A"), 0.5);
        List<Link> links = new ArrayList<>(single.links());
        links.remove(2);
        return single.withLinks(links);
    }

    private static Scenario bridge() {
        List<Part> parts = new ArrayList<>(List.of(full("A")));
        for (int i = 1; i <= 5; i++) {
            parts.add(Part.of("R" + i, PartKind.RESISTOR, "ohm", i));
        }
        return Scenario.of(
                "A bridge, neither series nor parallel",
                parts,
                List.of(
                        ideal("A.+", "R1.1"),
                        ideal("A.+", "R2.1"),
                        ideal("R1.2", "R3.1"),
                        ideal("R2.2", "R4.1"),
                        ideal("R1.2", "R5.1"),
                        ideal("R2.2", "R5.2"),
                        ideal("R3.2", "A.-"),
                        ideal("R4.2", "A.-")));
    }
}
