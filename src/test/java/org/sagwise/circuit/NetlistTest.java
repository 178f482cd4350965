package org.sagwise.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.terminal;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

class NetlistTest {

    static Netlist held(Scenario scenario) {
        return Netlist.of(scenario, Nets.of(scenario, link -> true), part -> part.kind() == PartKind.SWITCH);
    }

    static Netlist atRest(Scenario scenario) {
        return Netlist.of(scenario, Nets.of(scenario, link -> true), part -> false);
    }

    private static Part good(String id) {
        return cell(id, 4.2, 20);
    }

    private static List<String> ids(List<Branch> branches) {
        return branches.stream().map(Branch::part).toList();
    }

    @Test
    void net_closedSwitch_isMetal() {
        Scenario scenario = single(good("A"), 1.0);
        TerminalRef plus = terminal("A.+");
        TerminalRef coil = terminal("coil.1");
        assertEquals(held(scenario).net(plus), held(scenario).net(coil));
        assertNotEquals(atRest(scenario).net(plus), atRest(scenario).net(coil));
    }

    @Test
    void net_resistor_isMetalUpToATenthOfAnOhm() {
        for (double ohm : List.of(0.0, 0.1, 0.1001)) {
            Scenario scenario = Scenario.of("Lead", List.of(Part.of("lead", PartKind.RESISTOR, "ohm", ohm)), List.of());
            Netlist circuit = atRest(scenario);
            boolean metal = circuit.net(terminal("lead.1")) == circuit.net(terminal("lead.2"));
            assertEquals(ohm <= Netlist.CONDUCTOR_OHM, metal, ohm + " Ω");
            assertEquals(metal, circuit.loads().isEmpty());
        }
    }

    @Test
    void net_terminalsOfANet_areInFileOrder() {
        Netlist circuit = held(single(good("A"), 1.0));
        assertEquals(
                List.of(terminal("A.+"), terminal("fire.1"), terminal("fire.2"), terminal("coil.1")),
                circuit.terminals(circuit.net(terminal("A.+"))));
    }

    @Test
    void packs_sideBySide_areOneWithALoopForEveryCellMore() {
        List<Pack> packs = held(parallel(1.0, good("A"), good("B"), good("C"))).packs();
        assertEquals(1, packs.size());
        assertEquals(2, packs.get(0).loops().size());
        assertTrue(packs.get(0).loops().stream().allMatch(loop -> loop.climb() == 0));
    }

    @Test
    void packs_inARow_areOneWithoutLoop() {
        List<Pack> packs = held(series(1.0, good("A"), good("B"), good("C"))).packs();
        assertEquals(List.of("A", "B", "C"), packs.get(0).parts());
        assertTrue(packs.get(0).loops().isEmpty());
    }

    @Test
    void packs_nothingJoins_areApart() {
        Scenario scenario = single(good("A"), 1.0).plus(good("B"));
        assertEquals(2, held(scenario).packs().size());
    }

    @Test
    void loop_longWayRound_returnsToItsStart() {
        Scenario scenario = series(1.0, good("A"), good("B"), good("C"))
                .plus(good("D"))
                .plus(ideal("D.+", "C.+"))
                .plus(ideal("D.-", "A.-"));
        Loop loop = held(scenario).packs().get(0).loops().get(0);
        assertEquals(2, Math.abs(loop.climb()));
        assertEquals(4, loop.steps().size());
        int net = start(loop.steps().get(0));
        int first = net;
        for (Loop.Step step : loop.steps()) {
            assertEquals(net, start(step), "steps join");
            net = step.source().across(net);
        }
        assertEquals(first, net);
    }

    private static int start(Loop.Step step) {
        return step.up() > 0 ? step.source().from() : step.source().to();
    }

    private static Optional<Conflict> conflict(Scenario scenario) {
        Netlist circuit = held(scenario);
        return Conflicts.in(circuit.packs().get(0), circuit);
    }

    @Test
    void conflict_soundPacks_isNone() {
        assertTrue(conflict(parallel(1.0, good("A"), good("B"))).isEmpty());
        assertTrue(conflict(series(1.0, good("A"), good("B"))).isEmpty());
    }

    @Test
    void conflict_twoReversedAmongFive_namesTheFewer() {
        Scenario scenario = parallel(1.0, good("A"), good("B"), good("C"), good("D"), good("E"));
        Conflict conflict = conflict(turned(turned(scenario, "B"), "D")).orElseThrow();
        assertEquals(Conflict.Kind.REVERSED, conflict.kind());
        assertEquals(List.of("B", "D"), ids(conflict.turned()));
        assertEquals(List.of("A", "C", "E"), ids(conflict.others()));
    }

    @Test
    void conflict_oneOfThreeRowsHasAReversedCell_namesIt() {
        Scenario scenario = grid(3, 3);
        for (String id : List.of("A1", "B2", "C3")) {
            Conflict conflict = conflict(turned(scenario, id)).orElseThrow();
            assertEquals(List.of(id), ids(conflict.turned()));
        }
    }

    /** Rows side by side, each of as many cells in series, joined at their ends. */
    static Scenario grid(int rows, int inRow) {
        Part[] first = new Part[inRow];
        for (int i = 0; i < inRow; i++) {
            first[i] = good("A" + (i + 1));
        }
        Scenario scenario = series(4.0, first);
        for (int row = 1; row < rows; row++) {
            char name = (char) ('A' + row);
            for (int i = 1; i <= inRow; i++) {
                scenario = scenario.plus(good("" + name + i));
                if (i > 1) {
                    scenario = scenario.plus(ideal("" + name + (i - 1) + ".+", "" + name + i + ".-"));
                }
            }
            scenario = scenario.plus(ideal("" + name + "1.-", "A1.-"))
                    .plus(ideal("" + name + inRow + ".+", "A" + inRow + ".+"));
        }
        return scenario;
    }

    @Test
    void conflict_ringOfTwo_isReversedWhereTheLoadHangsAcross() {
        Scenario across = turned(parallel(1.0, good("A"), good("B")), "B");
        assertEquals(Conflict.Kind.REVERSED, conflict(across).orElseThrow().kind());
    }

    @Test
    void conflict_ringOfTwo_isShortedWhereTheLoadIsPassedBy() {
        Scenario row = series(1.0, good("A"), good("B")).plus(touch("A.-", "B.+", 1));
        assertEquals(Conflict.Kind.SHORTED, conflict(row).orElseThrow().kind());
    }

    @Test
    void conflict_ringOfTwoWithoutLoad_isReversed() {
        Scenario ring =
                Scenario.of("Ring", List.of(good("A"), good("B")), List.of(ideal("A.+", "B.-"), ideal("A.-", "B.+")));
        assertEquals(Conflict.Kind.REVERSED, conflict(ring).orElseThrow().kind());
    }

    @Test
    void rows_ofThree_areOneInOrder() {
        Row row = Rows.of(held(series(1.0, good("A"), good("B"), good("C")))).get(0);
        assertEquals(3, row.groups().size());
        assertEquals(Set.of("A", "B", "C"), new HashSet<>(ids(row.sources())));
        assertFalse(row.isOpposed());
    }

    @Test
    void rows_pairsSideBySideInARow_areGroups() {
        Scenario scenario = series(1.0, good("A"), good("B"));
        scenario = scenario.plus(good("C")).plus(ideal("C.+", "A.+")).plus(ideal("C.-", "A.-"));
        Row row = Rows.of(held(scenario)).get(0);
        assertEquals(2, row.groups().size());
        assertEquals(3, row.sources().size());
    }

    @Test
    void rows_turnedCell_isNamed() {
        Netlist circuit = held(turned(series(1.0, good("A"), good("B"), good("C")), "A"));
        Row row = Rows.of(circuit).get(0);
        assertTrue(row.isOpposed());
        assertEquals(List.of("A"), ids(row.turned(circuit.sources()).get(0).sources()));
    }

    @Test
    void rows_tapBetweenCells_endsTheRow() {
        Scenario scenario = series(1.0, good("A"), good("B"))
                .plus(Part.of("tap", PartKind.COIL, "ohm", 4))
                .plus(ideal("tap.1", "A.+"))
                .plus(ideal("tap.2", "A.-"));
        assertTrue(Rows.of(held(scenario)).isEmpty());
    }

    @Test
    void climb_upAndDownARow_countsCells() {
        Netlist circuit = held(series(1.0, good("A"), good("B"), good("C")));
        int bottom = circuit.net(terminal("A.-"));
        int top = circuit.net(terminal("C.+"));
        assertEquals(3, climb(circuit, bottom, top));
        assertEquals(-3, climb(circuit, top, bottom));
        Scenario apart = Scenario.of("Apart", List.of(good("A"), button(3)), List.of());
        Netlist nothing = atRest(apart);
        assertTrue(Climb.between(nothing, nothing.net(terminal("A.-")), nothing.net(terminal("fire.1")))
                .isEmpty());
    }

    private static int climb(Netlist circuit, int from, int to) {
        return Climb.between(circuit, from, to).orElseThrow().stream()
                .mapToInt(Loop.Step::up)
                .sum();
    }

    @Test
    void loads_coilAndBoard_areLoads() {
        Scenario scenario = Scenario.of(
                "Loads",
                List.of(
                        coil(1.0),
                        Part.of("board", PartKind.BOARD, "power_W", 10),
                        Part.of("S", PartKind.SUPPLY, "volts", 5)),
                List.of());
        assertEquals(List.of("coil", "board"), ids(atRest(scenario).loads()));
        assertEquals(List.of("S"), ids(atRest(scenario).sources()));
        assertEquals(List.of("board"), ids(atRest(scenario).outputs()));
    }
}
