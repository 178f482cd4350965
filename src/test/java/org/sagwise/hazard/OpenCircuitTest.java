package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.hazard.Examples.good;
import static org.sagwise.hazard.Examples.part;
import static org.sagwise.hazard.Examples.ring;
import static org.sagwise.hazard.Examples.single;
import static org.sagwise.hazard.Examples.withBoard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Take any one joint out of a sound circuit, and the caution names a joint that closes it again.
 */
class OpenCircuitTest {

    static Stream<Scenario> sound() {
        Scenario twoByTwo = series(2.0, good("A1"), good("A2"))
                .plus(good("B1"))
                .plus(good("B2"))
                .plus(ideal("B1.+", "B2.-"))
                .plus(ideal("B2.+", "A2.+"))
                .plus(ideal("B1.-", "A1.-"));
        return Stream.of(
                single(good("A")),
                series(4.0, good("A"), good("B")),
                series(8.0, good("A"), good("B"), good("C")),
                parallel(1.0, good("A"), good("B")),
                twoByTwo,
                ring(
                        good("A"),
                        part("F1", PartKind.FUSE, "rating_A", 10),
                        button(3),
                        part("M1", PartKind.METER, "mode", "amps"),
                        coil(1.0)),
                ring(good("A"), button(3), coil(1.0), part("C2", PartKind.COIL, "ohm", 1)),
                withBoard(good("A"), 0.5));
    }

    static Stream<Arguments> openings() {
        return sound().flatMap(scenario ->
                IntStream.range(0, scenario.links().size()).mapToObj(i -> Arguments.of(scenario, i)));
    }

    @ParameterizedTest
    @MethodSource("sound")
    void check_soundCircuit_isClosed(Scenario scenario) {
        assertEquals(List.of(), Found.ids(scenario));
    }

    @ParameterizedTest
    @MethodSource("openings")
    void check_anyJointTakenOut_namesOneThatClosesTheRing(Scenario scenario, int out) {
        List<Link> links = new ArrayList<>(scenario.links());
        links.remove(out);
        Scenario opened = scenario.withLinks(links);
        List<Caution> open = Found.in(opened).stream()
                .filter(c -> c.id().equals("open-circuit"))
                .toList();
        if (open.isEmpty()) {
            return; // another way round is left, as through the other row of two by two
        }
        Caution caution = open.get(0);
        assertEquals("joint", caution.details().get(CautionBuilder.VARIANT));
        Scenario mended = opened.plus(ideal(end(caution, "loose"), end(caution, "target")));
        assertEquals(List.of(), Found.ids(mended), () -> caution.details().toString());
    }

    private static String end(Caution caution, String which) {
        return TerminalRef.parse(caution.details().get(which).toString())
                .orElseThrow()
                .toString();
    }

    @Test
    void check_returnToTheCellMissing_namesCoilAndMinus() {
        Scenario scenario = single(good("A"));
        Caution caution =
                Found.only("open-circuit", scenario.withLinks(scenario.links().subList(0, 2)));
        assertEquals("coil.2", caution.details().get("loose").toString());
        assertEquals("A.-", caution.details().get("target").toString());
        assertEquals(Caution.When.FIRED, caution.when());
    }

    @Test
    void check_coilOnOneOutputOfABoard_namesTheOtherOutput() {
        Scenario scenario = withBoard(good("A"), 0.5);
        List<Link> links = scenario.links();
        Caution minus = Found.only("open-circuit", scenario.withLinks(links.subList(0, 4)));
        assertEquals("coil.2", minus.details().get("loose").toString());
        assertEquals("board.out-", minus.details().get("target").toString());
        Caution plus = Found.only(
                "open-circuit", scenario.withLinks(List.of(links.get(0), links.get(1), links.get(2), links.get(4))));
        assertEquals("coil.1", plus.details().get("loose").toString());
        assertEquals("board.out+", plus.details().get("target").toString());
    }

    @Test
    void check_twoCoilsBehindTheSameGap_areToldTogether() {
        Scenario scenario = ring(good("A"), button(3), coil(1.0), part("C2", PartKind.COIL, "ohm", 1));
        Caution caution =
                Found.only("open-circuit", scenario.withLinks(scenario.links().subList(0, 3)));
        assertEquals(List.of("coil", "C2", "A"), caution.parts());
    }

    @Test
    void check_gapBetweenTwoCoils_isToldOnce() {
        Scenario scenario = ring(good("A"), button(3), coil(1.0), part("C2", PartKind.COIL, "ohm", 1));
        List<Link> links = scenario.links();
        Caution caution =
                Found.only("open-circuit", scenario.withLinks(List.of(links.get(0), links.get(1), links.get(3))));
        assertEquals(List.of("coil", "C2"), caution.parts());
    }

    @Test
    void check_voltmeterAcrossTheCoil_isNotBlamed() {
        Scenario scenario = single(good("A"));
        Scenario opened = scenario.withLinks(scenario.links().subList(0, 2))
                .plus(part("M1", PartKind.METER))
                .plus(ideal("M1.red", "coil.1"))
                .plus(ideal("M1.black", "coil.2"));
        assertEquals("joint", Found.only("open-circuit", opened).details().get(CautionBuilder.VARIANT));
    }

    @Test
    void check_spareCoilOnTheBench_isNoOpenCircuit() {
        Scenario scenario = single(good("A")).plus(part("C2", PartKind.COIL, "ohm", 1));
        assertEquals(List.of(), Found.ids(scenario));
    }

    @Test
    void check_stuckSwitchAndMeltedFuse_areNamedAsWhatTheyAre() {
        Caution caution = Found.only("open-circuit", Examples.all().get("open-circuit.fuse"));
        assertEquals(List.of("coil", "F1"), caution.parts());
    }
}
