package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** What each edit does to a small bench. */
class EditsTest {

    private static final double TOLERANCE = 1e-9;

    @Test
    void addPart_idTaken_getsAnother() {
        Scenario after = new AddPart(Part.of("coil", PartKind.COIL, "ohm", 2), new Placement(9, 3, 0)).apply(pair());
        assertEquals("coil-2", after.parts().get(after.parts().size() - 1).id());
        assertEquals(9, after.placement().get("coil-2").x());
    }

    @Test
    void freshIds_cells_areLetters() {
        FreshIds fresh = new FreshIds(pair());
        assertEquals("C", fresh.next(PartKind.CELL));
        assertEquals("D", fresh.next(PartKind.CELL));
        assertEquals("fire-2", fresh.next(PartKind.SWITCH));
        assertEquals("fuse", fresh.next(PartKind.FUSE));
    }

    @Test
    void flip_cellInAPair_reversesIt() {
        Scenario after = new FlipParts(Set.of("B")).apply(pair());
        assertTrue(joined(after, "A.+", "B.-"));
        assertTrue(joined(after, "A.-", "B.+"));
        // Two ideal rest voltages of 4.2 V, 25 mΩ each, drive one another: 8.4 V over 50 mΩ.
        double loopA = Bench.of(after, CatalogueLoader.builtIn())
                .rest()
                .cell("B")
                .orElseThrow()
                .currentA();
        assertEquals(8.4 / 0.05, loopA, 1e-6);
    }

    @Test
    void flip_partUnderProbe_bringsTheProbeToTheOtherEnd() {
        Probes probes = Probes.of(ref("B.+"), ref("A.-"));
        Scenario after = new FlipParts(Set.of("B")).apply(pair().withProbes(Optional.of(probes)));
        assertEquals(ref("B.-"), after.probes().orElseThrow().red());
        assertEquals(ref("A.-"), after.probes().orElseThrow().black());
    }

    @Test
    void turn_part_changesNoJoint() {
        Scenario placed = pair().withPlacement(Map.of("B", new Placement(1, 2, 270)));
        Scenario after = new TurnParts(Set.of("B"), 1).apply(placed);
        assertEquals(0, after.placement().get("B").turnDegrees());
        assertEquals(placed.links(), after.links());
    }

    @Test
    void delete_part_takesItsJointsNotesAndProbesAlong() {
        Scenario before = pair().withNotes(List.of(Note.of("B", "new"), Note.of("A", "old")))
                .withProbes(Optional.of(Probes.of(ref("B.+"), ref("A.-"))));
        Scenario after = new DeleteParts(Set.of("B")).apply(before);
        assertEquals(3, after.links().size());
        assertEquals(List.of("A"), after.notes().stream().map(Note::on).toList());
        assertEquals(Optional.empty(), after.probes());
    }

    @Test
    void join_pairThatIsJoined_getsTheNewJoint() {
        Scenario after = JoinTerminals.jumper(ref("B.+"), ref("A.+"), 20, 100).apply(pair());
        assertEquals(pair().links().size(), after.links().size());
        assertEquals(
                new Joint.Jumper(new Joint.Awg(20), 100, 0),
                after.links().stream()
                        .filter(link -> joins(link, "A.+", "B.+"))
                        .findFirst()
                        .orElseThrow()
                        .joint());
    }

    @Test
    void join_threeTerminals_isAPlate() {
        Scenario bare = pair().withLinks(List.of());
        Scenario after = new JoinTerminals(
                        List.of(ref("A.+"), ref("B.+"), ref("fire.1")),
                        Link.touch(ref("A.+"), ref("B.+"), 4).keys().without("from", "to"))
                .apply(bare);
        assertTrue(joined(after, "A.+", "B.+"));
        assertTrue(joined(after, "A.+", "fire.1"));
        assertEquals(2, after.links().size());
    }

    @Test
    void duplicate_joinedParts_copiesTheJointsAmongThem() {
        Scenario after = new DuplicateParts(Set.of("A", "B"), 3, 0).apply(pair());
        assertTrue(joined(after, "C.+", "D.+"));
        assertTrue(joined(after, "C.-", "D.-"));
        assertEquals(pair().links().size() + 2, after.links().size());
    }

    @Test
    void setKeys_keyThatShutsAnotherOut_takesItsPlace() {
        Part cell = SetPartKeys.set("A", "charge", 0.5).apply(pair()).part("A").orElseThrow();
        assertEquals(0.5, cell.keys().number("charge", 0));
        assertTrue(!cell.keys().has("rest_V"));
    }

    @Test
    void setKeys_idAndKind_stay() {
        assertEquals(pair(), SetPartKeys.set("A", "id", "Z").apply(pair()));
    }

    /** Watts of two ideal-jointed 4.2 V cells of 25 mΩ on 1 Ω: V² R / (R + r)². */
    @ParameterizedTest
    @CsvSource({"1, 4.2, 0.0125", "2, 8.4, 0.05"})
    void arrange_pair_keepsTheCoil(int rows, double packV, double packOhm) {
        Scenario after = new ArrangeCells(List.of("A", "B"), rows, 0).apply(pair());
        double amps = packV / (1 + packOhm);
        assertEquals(amps * amps, coilW(after), TOLERANCE);
    }

    @Test
    void arrange_thereAndBack_isTheSameCircuit() {
        Scenario series = new ArrangeCells(List.of("A", "B"), 2, 0).apply(pair());
        Scenario back = new ArrangeCells(List.of("A", "B"), 1, 0).apply(series);
        assertNotEquals(coilW(pair()), coilW(series));
        assertEquals(coilW(pair()), coilW(back), TOLERANCE);
        assertEquals(Set.copyOf(pair().links()), Set.copyOf(back.links()));
    }

    @Test
    void arrange_fourCells_twoByTwo() {
        Scenario four = new DuplicateParts(Set.of("A", "B"), 3, 0).apply(pair());
        Scenario after = new ArrangeCells(List.of("A", "B", "C", "D"), 2, 0).apply(four);
        double amps = 8.4 / (1 + 0.025);
        assertEquals(amps * amps, coilW(after), TOLERANCE);
    }

    @Test
    void arrange_pairWithOneReversed_isAsSoundAsNew() {
        Scenario reversed = new FlipParts(Set.of("B")).apply(pair());
        Scenario after = new ArrangeCells(List.of("A", "B"), 1, 0).apply(reversed);
        assertEquals(coilW(pair()), coilW(after), TOLERANCE);
    }

    @Test
    void choices_ofSixCells_areItsDivisors() {
        assertEquals(List.of(1, 2, 3, 6), ArrangeCells.choices(6));
        assertEquals("2S3P", ArrangeCells.shortName(6, 2));
    }

    @Test
    void name_ofOneAndOfSeveral_saysWhich() {
        assertEquals(EditName.of("flip.one", "B"), new FlipParts(Set.of("B")).name(pair()));
        assertEquals(EditName.of("flip.many", "2"), new FlipParts(Set.of("A", "B")).name(pair()));
    }

    /** Two cells side by side on 1 Ω, all joints ideal. */
    private static Scenario pair() {
        return Scenario.of(
                "pair",
                List.of(
                        cell("A"),
                        cell("B"),
                        Part.of("fire", PartKind.SWITCH, "closed_mohm", 0),
                        Part.of("coil", PartKind.COIL, "ohm", 1)),
                List.of(
                        Link.ideal(ref("A.+"), ref("B.+")),
                        Link.ideal(ref("A.-"), ref("B.-")),
                        Link.ideal(ref("A.+"), ref("fire.1")),
                        Link.ideal(ref("fire.2"), ref("coil.1")),
                        Link.ideal(ref("coil.2"), ref("A.-"))));
    }

    private static Part cell(String id) {
        return Part.of(id, PartKind.CELL, "rest_V", 4.2, "internal_mohm", 25, "capacity_mAh", 2500, "limit_A", 20);
    }

    private static TerminalRef ref(String text) {
        return TerminalRef.parse(text).orElseThrow();
    }

    private static boolean joined(Scenario scenario, String one, String other) {
        return scenario.links().stream().anyMatch(link -> joins(link, one, other));
    }

    private static boolean joins(Link link, String one, String other) {
        return Set.of(link.from().toString(), link.to().toString()).equals(Set.of(one, other));
    }

    private static double coilW(Scenario scenario) {
        return Bench.of(scenario, CatalogueLoader.builtIn())
                .fired()
                .coil("coil")
                .orElseThrow()
                .powerW();
    }
}
