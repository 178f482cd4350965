package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;
import static org.sagwise.hazard.Examples.bare;
import static org.sagwise.hazard.Examples.good;
import static org.sagwise.hazard.Examples.part;
import static org.sagwise.hazard.Examples.ring;
import static org.sagwise.hazard.Examples.single;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** One mistake, one caution: what is found, whom it names, when it shows. */
class CausesTest {

    private static final double EXACT = 1e-6;

    @Test
    void reversedPair_sideBySide_isToldOnceWithTheLoopCurrent() {
        Scenario scenario = turned(parallel(1.0, good("A"), good("B")), "B");
        Caution caution = Found.only("reversed-in-parallel", scenario);
        assertEquals(Signal.DANGER, caution.signal());
        assertEquals(Caution.When.AT_REST, caution.when());
        assertEquals(List.of("B", "A"), caution.parts());
        assertEquals(2 * 4.2 / 0.040, caution.measured(), EXACT);
        assertEquals(20, caution.limit(), EXACT);
    }

    /** What nobody knows is not judged: neither over a limit nor within one. */
    @Test
    void cell_ofUnknownLimit_isToldAsUnknownAndNeverAsOverIt() {
        Scenario scenario = org.sagwise.fixture.Circuits.single(good("A").without("limit_A"), 0.15);
        Caution caution = Found.only("limit-unknown", scenario);
        assertEquals(Signal.CAUTION, caution.signal());
        assertTrue(Double.isNaN(caution.limit()));
        assertEquals(4.2 / (0.15 + 0.020), caution.measured(), 1);
    }

    /** A load so low is a short by the standards, whatever the cell may give. */
    @Test
    void load_thatShortsACellOfUnknownLimit_isAShort() {
        Found.only("pack-shorted", org.sagwise.fixture.Circuits.single(good("A").without("limit_A"), 0.05));
    }

    @Test
    void reversedPair_ofIdealCells_hasNoNumberButIsFound() {
        Scenario scenario = turned(parallel(1.0, cell("A", 4.2, 0), cell("B", 4.2, 0)), "B");
        Caution caution = Found.only("reversed-in-parallel", scenario);
        assertEquals(Signal.DANGER, caution.signal());
        assertTrue(Double.isNaN(caution.measured()));
    }

    @Test
    void reversedPair_throughALongDirtyContact_isOnlyAWarning() {
        Scenario pair = turned(parallel(1.0, good("A"), good("B")), "B");
        List<Link> links = new ArrayList<>(pair.links());
        links.set(0, touch("A.+", "B.-", 1000));
        Caution caution = Found.only("reversed-in-parallel", pair.withLinks(links));
        assertEquals(Signal.WARNING, caution.signal());
        assertEquals(8.4 / 1.04, caution.measured(), EXACT);
    }

    @Test
    void reversedPair_joinedOnlyByTheButton_showsWhenHeld() {
        Scenario pair = Scenario.of(
                "Button between",
                List.of(good("A"), good("B"), button(3), coil(1.0)),
                List.of(
                        ideal("A.+", "fire.1"),
                        ideal("fire.2", "B.-"),
                        ideal("A.-", "B.+"),
                        ideal("coil.1", "A.+"),
                        ideal("coil.2", "A.-")));
        Caution caution = Found.only("reversed-in-parallel", pair);
        assertEquals(Caution.When.FIRED, caution.when());
    }

    @Test
    void oneOfThreeReversed_sideBySide_isNamedFirst() {
        Scenario three = parallel(1.0, good("A"), good("B"), good("C"));
        for (String id : List.of("A", "B", "C")) {
            Caution caution = Found.only("reversed-in-parallel", turned(three, id));
            assertEquals(id, caution.parts().get(0));
            assertEquals(280, caution.measured(), EXACT);
        }
    }

    @Test
    void oneReversed_inOneOfTwoRows_isNamedFirst() {
        Scenario scenario = turned(twoByTwo(), "A2");
        Caution caution = Found.only("reversed-in-parallel", scenario);
        assertEquals("A2", caution.parts().get(0));
        assertEquals(8.4 / 0.080, caution.measured(), EXACT);
    }

    private static Scenario twoByTwo() {
        Scenario row = series(2.0, good("A1"), good("A2"));
        return row.plus(good("B1"))
                .plus(good("B2"))
                .plus(ideal("B1.+", "B2.-"))
                .plus(ideal("B2.+", "A2.+"))
                .plus(ideal("B1.-", "A1.-"));
    }

    @Test
    void oneCell_besideARowOfTwo_isAnUnequalRow() {
        Scenario scenario = series(2.0, good("A"), good("B"))
                .plus(good("C"))
                .plus(ideal("C.+", "B.+"))
                .plus(ideal("C.-", "A.-"));
        Caution caution = Found.only("unequal-rows-in-parallel", scenario);
        assertEquals(4.2 / 0.060, caution.measured(), EXACT);
    }

    @Test
    void rowOfTwo_shortedPastTheCoil_isAShortAndNoReversedCell() {
        Scenario scenario = series(2.0, good("A"), good("B")).plus(touch("A.-", "B.+", 10));
        Caution caution = Found.only("pack-shorted", scenario);
        assertEquals(Caution.When.AT_REST, caution.when());
        assertEquals(8.4 / 0.050, caution.measured(), EXACT);
        assertTrue(caution.parts().containsAll(List.of("A", "B")));
        assertTrue(caution.links().contains(4));
    }

    @Test
    void rowOfThree_shorted_isAShort() {
        Scenario scenario = series(4.0, good("A"), good("B"), good("C")).plus(touch("A.-", "C.+", 10));
        assertEquals(12.6 / 0.070, Found.only("pack-shorted", scenario).measured(), EXACT);
    }

    @Test
    void packOfTwoByTwo_shorted_isAShort() {
        Caution caution = Found.only("pack-shorted", twoByTwo().plus(touch("A1.-", "A2.+", 10)));
        assertEquals(4, caution.parts().size());
    }

    @Test
    void idealCell_shorted_hasNoNumberButIsFound() {
        Scenario scenario = single(cell("A", 4.2, 0)).plus(ideal("A.+", "A.-"));
        Caution caution = Found.only("pack-shorted", scenario);
        assertTrue(Double.isNaN(caution.measured()));
        assertEquals(Signal.DANGER, caution.signal());
    }

    @Test
    void jumperAcrossACell_isAShortAndNotAHotJumper() {
        Scenario scenario = single(good("A")).plus(jumper("A.+", "A.-", 24, 50));
        assertEquals(List.of(3), Found.only("pack-shorted", scenario).links());
    }

    @Test
    void shortThroughAFuse_keepsSayingThatTheFuseWillOpen() {
        Scenario scenario = ring(good("A"), part("F1", PartKind.FUSE, "rating_A", 15), coil(1.0))
                .plus(touch("F1.2", "A.-", 5));
        assertEquals(List.of("pack-shorted", "fuse-will-open"), Found.ids(scenario));
    }

    @Test
    void jumperRoundTheCoil_bypassesItWhenTheButtonIsHeld() {
        Scenario scenario = single(good("A")).plus(touch("coil.1", "coil.2", 5));
        Caution caution = Found.only("coil-bypassed", scenario);
        assertEquals(Caution.When.FIRED, caution.when());
        assertEquals(Signal.DANGER, caution.signal());
        assertEquals(List.of("coil", "A"), caution.parts());
    }

    @Test
    void dirtyJointRoundTheCoil_takesLittle_isNoBypass() {
        Scenario scenario = single(good("A")).plus(touch("coil.1", "coil.2", 600));
        assertEquals(List.of("pack-shorted"), Found.ids(scenario));
    }

    @Test
    void meterOnAmps_acrossTheCell_isToldInsteadOfAShort() {
        Scenario scenario = metered("A.+", "A.-");
        Caution caution = Found.only("meter-across-cell", scenario);
        assertEquals(4.2 / 0.030, caution.measured(), EXACT);
        assertEquals("meter", caution.parts().get(0));
    }

    @Test
    void meterOnAmps_acrossTheCoil_showsWhenHeld() {
        assertEquals(
                Caution.When.FIRED,
                Found.only("meter-across-cell", metered("coil.1", "coil.2")).when());
    }

    @Test
    void meterOnAmps_inTheRing_isAsItShouldBe() {
        Scenario scenario = ring(good("A"), part("M1", PartKind.METER, "mode", "amps"), button(3), coil(1.0));
        assertEquals(List.of(), Found.ids(scenario));
    }

    @Test
    void meterOnAmps_inTheRingOfABypassedCoil_isNotBlamed() {
        Scenario scenario = ring(good("A"), part("M1", PartKind.METER, "mode", "amps"), button(3), coil(1.0))
                .plus(touch("coil.1", "coil.2", 1));
        assertEquals(List.of("coil-bypassed"), Found.ids(scenario));
    }

    private static Scenario metered(String red, String black) {
        return single(good("A"))
                .plus(part("meter", PartKind.METER, "mode", "amps"))
                .plus(ideal("meter.red", red))
                .plus(ideal("meter.black", black));
    }

    @Test
    void tornWraps_thatTouchEachOther_areOneCaution() {
        Scenario scenario = series(
                        2.0, good("A").with("wrap", "torn"), good("B").with("wrap", "torn"))
                .plus(touch("A.can", "B.can", 1));
        Caution caution = Found.only("torn-wrap-touching", scenario);
        assertEquals(List.of("A", "B"), caution.parts());
        assertEquals(4.2 / 0.021, caution.measured(), EXACT);
    }

    @Test
    void tornWrap_joinedToItsOwnMinus_isOnlyTorn() {
        Scenario scenario = single(good("A").with("wrap", "torn")).plus(touch("A.can", "A.-", 5));
        assertEquals(List.of("torn-wrap"), Found.ids(scenario));
    }

    @Test
    void soundWrap_onAnything_isANotice() {
        Scenario scenario = single(good("A")).plus(touch("A.can", "A.+", 5));
        assertEquals(Signal.NOTICE, Found.only("joint-on-sound-wrap", scenario).signal());
    }

    @Test
    void reversedInARowOfTwo_cancels() {
        Scenario scenario = turned(series(4.0, good("A"), good("B")), "B");
        Caution caution = Found.only("reversed-in-series", scenario);
        assertEquals(Signal.NOTICE, caution.signal());
        assertEquals(0, caution.measured(), EXACT);
        assertEquals(List.of("B", "A"), caution.parts());
    }

    @Test
    void reversedInARowOfThree_isChargedBackwards() {
        Scenario scenario = turned(series(1.0, good("A"), good("B"), good("C")), "B");
        Caution caution = Found.only("reversed-in-series", scenario);
        assertEquals(Signal.WARNING, caution.signal());
        assertEquals("B", caution.parts().get(0));
        assertEquals(4.2 / 1.060, caution.measured(), EXACT);
        assertEquals(1.25, caution.limit(), EXACT);
    }

    @Test
    void reversedInARowOfFour_twoAgainstTwo_cancels() {
        Scenario scenario = turned(turned(series(4.0, good("A"), good("B"), good("C"), good("D")), "B"), "C");
        Caution caution = Found.only("reversed-in-series", scenario);
        assertEquals("cancel", caution.details().get(CautionBuilder.VARIANT));
        assertEquals(List.of("B", "C", "A", "D"), caution.parts().stream().toList());
    }

    /** So a pair side by side is begun; nothing has been turned round. */
    @Test
    void likePolesJoined_nothingElseYet_isNotFlagged() {
        Scenario begun =
                Scenario.of("Begun", List.of(good("A"), good("B"), button(3), coil(1.0)), List.of(ideal("A.+", "B.+")));
        assertEquals(List.of(), Found.ids(begun));
    }

    @Test
    void likePolesJoined_isFlaggedOnceThereIsARing() {
        List<Part> parts = List.of(good("A"), good("B"), button(3), coil(1.0));
        Scenario further = Scenario.of("Further", parts, List.of(ideal("A.+", "B.+"), ideal("B.-", "coil.1")));
        assertFalse(Found.ids(further).contains("reversed-in-series"));

        Scenario ring = further.plus(ideal("coil.2", "fire.1")).plus(ideal("fire.2", "A.-"));
        assertTrue(Found.ids(ring).contains("reversed-in-series"));
    }

    @Test
    void reversedInARow_withTheCoilInBetween_isFound() {
        Scenario scenario = Scenario.of(
                "Between",
                List.of(good("A"), good("B"), button(3), coil(1.0)),
                List.of(
                        ideal("A.+", "coil.1"),
                        ideal("coil.2", "fire.1"),
                        ideal("fire.2", "B.+"),
                        ideal("B.-", "A.-")));
        Found.only("reversed-in-series", scenario);
    }

    @Test
    void twoCircuits_withACommonMinus_areNoRow() {
        Scenario scenario = Scenario.of(
                "Common minus",
                List.of(good("A"), good("B"), part("C1", PartKind.COIL, "ohm", 1), part("C2", PartKind.COIL, "ohm", 1)),
                List.of(
                        ideal("A.+", "C1.1"),
                        ideal("C1.2", "A.-"),
                        ideal("B.+", "C2.1"),
                        ideal("C2.2", "B.-"),
                        ideal("A.-", "B.-")));
        assertEquals(List.of(), Found.ids(scenario));
    }

    @Test
    void flatBesideFull_isToldOnce() {
        Scenario scenario = parallel(1.0, good("A"), cell("B", 3.3, 20));
        Caution caution = Found.only("unequal-charge-in-parallel", scenario);
        assertEquals(0.9 / 0.040, caution.measured(), EXACT);
        assertEquals(List.of("B", "A"), caution.parts());
        assertEquals(Signal.DANGER, caution.signal());
    }

    @Test
    void emptyCellInARow_isDrivenBackwards() {
        Scenario scenario = series(4.0, good("A"), cell("B", 0, 20));
        assertEquals(List.of("cell-driven-backwards"), Found.ids(scenario));
    }

    @Test
    void twoModelsInOnePack_areOneCaution() {
        Scenario scenario = parallel(
                1.0, good("A"), cell("B", 4.2, 40).with("capacity_mAh", 3500).with("limit_A", 8));
        assertEquals(List.of("mixed-capacity"), Found.ids(scenario));
    }

    @Test
    void twoPacks_thatNothingJoins_areNotMixed() {
        Scenario first = single(good("A"));
        Scenario scenario = first.plus(good("B").with("capacity_mAh", 3500));
        assertEquals(List.of(), Found.ids(scenario));
    }

    @Test
    void coldCharging_isNotAlsoACold() {
        assertEquals(List.of("charging-temperature"), Found.ids(Examples.all().get("charging-temperature.cold")));
    }

    /** The same current fills both: the full one is driven past its limit, which is a warning. */
    @Test
    void chargerOnAnUnequalRow_warnsOfTheFullCell() {
        List<Caution> found = Found.in(Examples.unequalRowOnCharger());

        assertEquals(
                List.of("unequal-charge-in-series"),
                found.stream().map(Caution::id).toList());
        assertEquals(Signal.WARNING, found.get(0).signal());
        assertEquals(List.of("A", "B"), found.get(0).parts());
    }

    @Test
    void chargerOnARowOfTwo_mayGoToTwiceTheVolts() {
        Scenario row = Scenario.of(
                "Charger",
                List.of(
                        cell("A", 3.6, 20),
                        cell("B", 3.6, 20),
                        part("charger", PartKind.CHARGER, "current_A", 1, "limit_V", 8.4)),
                List.of(ideal("A.+", "B.-"), ideal("charger.+", "B.+"), ideal("charger.-", "A.-")));
        assertEquals(List.of(), Found.ids(row));
        assertEquals(List.of(), Found.ids(row.withPart("charger", part -> part.with("limit_V", 8.49))));
        assertEquals(
                List.of("charger-too-high"), Found.ids(row.withPart("charger", part -> part.with("limit_V", 8.51))));
    }

    @Test
    void emptyBench_andPartsLyingAbout_giveNoCaution() {
        assertEquals(List.of(), Found.ids(Scenario.empty()));
        assertEquals(List.of(), Found.ids(bare(good("A"), good("B"), coil(1.0), button(3))));
    }

    @Test
    void stuckButton_firesAtRest() {
        Scenario scenario = single(good("A")).withPart("fire", p -> p.with("stuck", "closed"));
        assertEquals(Caution.When.AT_REST, Found.only("switch-stuck", scenario).when());
    }

    @Test
    void overLimitCells_ofOnePack_areToldTogetherTheWorstFirst() {
        Scenario scenario = parallel(0.05, cell("A", 4.2, 22), cell("B", 4.2, 20));
        Caution caution = Found.one("pack-shorted", scenario);
        assertEquals(List.of("coil", "B"), caution.parts());
        Scenario low = parallel(
                0.102,
                cell("A", 4.2, 16).with("limit_A", 18),
                cell("B", 4.2, 15).with("limit_A", 18));
        assertEquals(List.of("B", "A"), Found.only("cell-over-limit", low).parts());
    }

    @Test
    void ammeterRoundOneOfTwoCoils_bypassesIt() {
        Scenario scenario = ring(good("A"), button(3), coil(1.0), part("C2", PartKind.COIL, "ohm", 1))
                .plus(part("M1", PartKind.METER, "mode", "amps"))
                .plus(ideal("M1.red", "C2.1"))
                .plus(ideal("M1.black", "C2.2"));
        assertEquals("C2", Found.only("coil-bypassed", scenario).parts().get(0));
    }

    @Test
    void reversedPair_besideABypassedCoil_isStillReversed() {
        Scenario scenario = turned(parallel(1.0, good("A"), good("B")), "B")
                .plus(part("C2", PartKind.COIL, "ohm", 1))
                .plus(ideal("C2.1", "A.+"))
                .plus(ideal("C2.2", "A.+"));
        assertTrue(Found.ids(scenario).contains("reversed-in-parallel"));
    }

    @Test
    void lowCoil_besideAReversedPair_isNoSecondShort() {
        Scenario scenario = turned(parallel(0.05, good("A"), good("B")), "B");
        assertEquals(List.of("reversed-in-parallel"), Found.ids(scenario));
    }

    @Test
    void lowCoil_isNotBlamedForACellElsewhere() {
        Scenario scenario = parallel(0.09, good("A"), good("B"), good("C"), good("D"))
                .plus(good("X"))
                .plus(part("far", PartKind.COIL, "ohm", 0.15))
                .plus(ideal("X.+", "far.1"))
                .plus(ideal("X.-", "far.2"));
        assertEquals(List.of("cell-over-limit"), Found.ids(scenario));
    }

    @Test
    void unequalPair_onALowCoilToo_isAlsoOverItsLimit() {
        Scenario scenario = parallel(0.1, good("A"), cell("B", 4.1, 20));
        Caution over = Found.one("cell-over-limit", scenario);
        assertEquals(Caution.When.FIRED, over.when());
        assertEquals(List.of("cell-over-limit", "unequal-charge-in-parallel"), Found.ids(scenario));
    }

    @Test
    void stuckButton_thatFiresNothing_isANotice() {
        Scenario scenario = bare(part("fire", PartKind.SWITCH, "stuck", "closed"));
        assertEquals(Signal.NOTICE, Found.only("switch-stuck", scenario).signal());
    }
}
