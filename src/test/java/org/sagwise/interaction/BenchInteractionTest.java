package org.sagwise.interaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.JointChoice;

/** The machine behind mouse, clicks and keys, without any of them. */
class BenchInteractionTest {

    private static final double REACH = 10;

    private Scenario scenario = Scenario.of("", List.of(coil("one"), coil("two")), List.of())
            .withPlacement(Map.of(
                    "one", new Placement(2, 5, 0),
                    "two", new Placement(8, 5, 0)));
    private final BenchInteraction hands =
            new BenchInteraction(() -> new Surface(scenario, BenchLayout.of(scenario)), this::perform, () -> {});

    private static Part coil(String id) {
        return Part.of(id, PartKind.COIL, "ohm", 1);
    }

    private void perform(Edit edit) {
        scenario = edit.apply(scenario);
    }

    private static TerminalRef ref(String text) {
        return TerminalRef.parse(text).orElseThrow();
    }

    private double x(String id) {
        return scenario.placement().get(id).x();
    }

    @Test
    void take_movedAndDropped_liesOnTheLatticeAndIsChosen() {
        hands.take(coil("coil"), 0, 0);
        hands.moveTo(611, 409, REACH);
        assertTrue(hands.drop());

        assertEquals(new Placement(15.5, 10, 0), scenario.placement().get("coil"));
        assertEquals(Selection.part("coil"), hands.chosen());
        assertFalse(hands.isBusy());
    }

    @Test
    void take_cancelled_leavesNothing() {
        Scenario before = scenario;
        hands.take(coil("coil"), 400, 400);
        hands.cancel();
        assertEquals(before, scenario);
        assertFalse(hands.isBusy());
    }

    /** Lower end of one at (80, 260); upper end of the new one 60 above its middle. */
    @Test
    void drop_terminalNearAnother_touchesIt() {
        hands.take(coil("coil"), 0, 0);
        hands.moveTo(95, 335, REACH);
        hands.drop();

        assertEquals(new Placement(2, 8, 0), scenario.placement().get("coil"));
        assertEquals(1, scenario.links().size());
        assertEquals(ref("one.2"), scenario.links().get(0).from());
        assertEquals(ref("coil.1"), scenario.links().get(0).to());
        assertEquals(
                new Joint.Touch(JointChoice.CONTACT_MOHM),
                scenario.links().get(0).joint());
    }

    /** One lies at (80, 200) and its lower end at (80, 260), two at (320, 200). */
    @Test
    void guides_ofAPartInTheHand_showWhatItTouchesAndIsInLineWith() {
        hands.take(coil("coil"), 0, 0);
        hands.moveTo(95, 335, REACH);
        assertEquals(List.of(new Point(80, 260)), hands.guides().touches());
        assertEquals(List.of(new Line(80, 320, 80, 200)), hands.guides().lines());
        hands.moveTo(200, 200, REACH);
        assertEquals(new Guides(List.of(), List.of(new Line(200, 200, 80, 200))), hands.guides());
        hands.moveTo(200, 480, REACH);
        assertEquals(Guides.NONE, hands.guides());
    }

    @Test
    void guides_ofALiftedPart_leaveItsOldPlaceOut() {
        hands.choose(Selection.part("one"));
        hands.lift(80, 200);
        assertEquals(Guides.NONE, hands.guides());
        hands.moveTo(320, 400, REACH);
        assertEquals(new Guides(List.of(), List.of(new Line(320, 400, 320, 200))), hands.guides());
    }

    @Test
    void drop_farFromAnyTerminal_touchesNothing() {
        hands.take(coil("coil"), 0, 0);
        hands.moveTo(80, 400, REACH);
        hands.drop();
        assertEquals(List.of(), scenario.links());
    }

    @Test
    void lift_keysAndMouse_goTheSameWay() {
        hands.choose(Selection.part("one"));
        hands.lift(80, 200);
        hands.nudge(2, 0);
        hands.nudge(2, 0);
        hands.drop();
        double byKeys = x("one");
        hands.lift(160, 200);
        hands.moveTo(80, 200, REACH);
        hands.drop();

        assertEquals(4, byKeys);
        assertEquals(2, x("one"));
    }

    @Test
    void nudge_withEmptyHand_pushesWhatIsChosen() {
        hands.choose(Selection.part("two"));
        hands.nudge(-1, 0);
        assertEquals(7.5, x("two"));
    }

    @Test
    void pull_fromTerminalToTerminal_joinsAsChosen() {
        hands.setJoint(JointChoice.IDEAL);
        hands.pull(ref("one.1"), 80, 140);
        hands.moveTo(322, 141, REACH);
        assertTrue(hands.drop());

        assertEquals(1, scenario.links().size());
        assertEquals(new Joint.Ideal(), scenario.links().get(0).joint());
        assertEquals(ref("two.1"), scenario.links().get(0).to());
    }

    @Test
    void pull_whereTheChosenJointEnds_takesThatEndElsewhere() {
        hands.pull(ref("one.1"), 80, 140);
        hands.pointAt(Optional.of(ref("two.1")), 320, 140);
        hands.drop();
        Link before = scenario.links().get(0);
        hands.choose(Selection.link(0));
        hands.pull(ref("two.1"), 320, 140);
        hands.pointAt(Optional.of(ref("two.2")), 320, 260);
        assertTrue(hands.drop());

        assertEquals(List.of(before.between(ref("one.1"), ref("two.2"))), scenario.links());
    }

    @Test
    void pull_theEndBackToWhereItWas_changesNothing() {
        hands.pull(ref("one.1"), 80, 140);
        hands.pointAt(Optional.of(ref("two.1")), 320, 140);
        hands.drop();
        Scenario before = scenario;
        hands.choose(Selection.link(0));
        hands.pull(ref("one.1"), 80, 140);
        hands.pointAt(Optional.of(ref("one.1")), 80, 140);
        assertFalse(hands.drop());
        hands.cancel();

        assertEquals(before, scenario);
    }

    @Test
    void pull_letGoOverNothing_staysInTheHand() {
        hands.pull(ref("one.1"), 80, 140);
        hands.moveTo(200, 500, REACH);
        assertFalse(hands.drop());
        assertTrue(hands.isBusy());
        assertEquals(List.of(), scenario.links());
    }

    @Test
    void pull_backToWhereItBegan_joinsNothing() {
        hands.pull(ref("one.1"), 80, 140);
        hands.moveTo(80, 140, REACH);
        assertFalse(hands.drop());
    }

    @Test
    void frame_aroundOnePart_choosesItAndKeepsTheOther() {
        hands.frame(0, 0, Set.of("two"));
        hands.moveTo(200, 400, REACH);
        assertEquals(Selection.of(Set.of("one", "two"), Set.of()), hands.chosen());

        hands.cancel();
        assertEquals(Selection.part("two"), hands.chosen());
    }

    @Test
    void probe_putOnATerminal_restsThereAndLeavesTheOther() {
        hands.takeProbe(Tool.Probe.RED, 0, 0);
        hands.moveTo(80, 140, REACH);
        hands.drop();
        hands.takeProbe(Tool.Probe.BLACK, 0, 0);
        hands.moveTo(80, 260, REACH);
        hands.drop();

        assertEquals(ref("one.1"), scenario.probes().orElseThrow().red());
        assertEquals(ref("one.2"), scenario.probes().orElseThrow().black());
    }

    @Test
    void gather_severalTerminals_areJoinedByOnePlate() {
        scenario = scenario.plus(coil("three"))
                .withPlacement(Map.of(
                        "one", new Placement(2, 5, 0),
                        "two", new Placement(8, 5, 0),
                        "three", new Placement(14, 5, 0)));
        hands.gather(ref("one.1"));
        hands.plate();
        assertTrue(hands.isBusy());
        hands.gather(ref("one.2"));
        hands.gather(ref("two.1"));
        hands.gather(ref("one.2"));
        hands.moveTo(200, 600, REACH);
        assertFalse(hands.drop());
        hands.moveTo(562, 141, REACH);
        assertTrue(hands.drop());

        assertEquals(
                List.of(ref("two.1"), ref("three.1")),
                scenario.links().stream().map(Link::to).toList());
        assertTrue(scenario.links().stream().allMatch(it -> it.from().equals(ref("one.1"))));
        assertEquals(
                Set.of(new Joint.Touch(JointChoice.CONTACT_MOHM)),
                scenario.links().stream().map(Link::joint).collect(Collectors.toSet()));
    }

    @Test
    void gather_fromAJointThatIsBegun_keepsItsEnd() {
        hands.setJoint(JointChoice.IDEAL);
        hands.pull(ref("one.1"), 80, 140);
        hands.gather(ref("two.1"));
        hands.plate();

        assertEquals(ref("one.1"), scenario.links().get(0).from());
        assertEquals(new Joint.Ideal(), scenario.links().get(0).joint());
    }

    @Test
    void gather_lastOneLetGo_emptiesTheHand() {
        hands.gather(ref("one.1"));
        hands.gather(ref("one.1"));
        assertFalse(hands.isBusy());
    }

    @Test
    void probe_letGoOverNothing_takesTheMeterAway() {
        hands.takeProbe(Tool.Probe.RED, 0, 0);
        hands.moveTo(400, 600, REACH);
        assertFalse(hands.drop());
        hands.moveTo(80, 140, REACH);
        assertTrue(hands.drop());
        scenario = scenario.withProbes(scenario.probes().map(it -> it.turnedTo(MeterMode.AMPS)));

        hands.takeProbe(Tool.Probe.BLACK, 0, 0);
        hands.moveTo(80, 260, REACH);
        hands.drop();
        assertEquals(MeterMode.AMPS, scenario.probes().orElseThrow().mode());

        hands.takeProbe(Tool.Probe.BLACK, 80, 260);
        hands.moveTo(400, 600, REACH);
        assertTrue(hands.drop());
        assertTrue(scenario.probes().isEmpty());
        assertFalse(hands.isBusy());
    }

    @Test
    void probeAt_handleOfAProbe_isFoundBesideItsTerminal() {
        scenario = scenario.withProbes(Optional.of(Probes.of(ref("one.1"), ref("two.1"))));
        Surface bench = new Surface(scenario, BenchLayout.of(scenario));
        Line handle = bench.layout().probes().orElseThrow().redHandle();
        double x = (handle.x1() + handle.x2()) / 2;
        double y = (handle.y1() + handle.y2()) / 2;

        assertEquals(Tool.Probe.RED, bench.probeAt(x, y, REACH).orElseThrow());
        assertTrue(bench.probeAt(80, 140, REACH).isEmpty());
        assertTrue(bench.probeAt(x + 300, y + 300, REACH).isEmpty());
    }
}
