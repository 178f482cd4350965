package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.report.compare.BuildDifference;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.compare.Outcome;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunState;
import org.sagwise.run.Work;
import org.sagwise.run.playback.Speed;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.web.engine.LiveBench;

class LiveBenchTest {

    private long nanos;

    private LiveBench open(String demo) {
        Scenario scenario = new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(demo, Locale.ENGLISH))
                .scenario()
                .orElseThrow();
        return LiveBench.of(scenario, CatalogueLoader.builtIn(), () -> nanos);
    }

    private static double watts(LiveBench bench) {
        return bench.shown().readings().pack().deliveredW();
    }

    @Test
    void hold_theButton_givesTheWattsOfTheWindow() {
        LiveBench bench = open("two-cells-side-by-side");
        Assessment window = Assessment.of(bench.scenario(), CatalogueLoader.builtIn());

        assertEquals(0, watts(bench), 1e-3);
        bench.hold(true);
        assertEquals(window.with(Press.HELD).readings(), bench.shown().readings());
        bench.hold(false);
        assertEquals(0, watts(bench), 1e-3);
    }

    @Test
    void edit_turnTheReversedCell_curesAndCanBeTakenBack() {
        LiveBench bench = open("side-by-side-one-reversed");
        Scenario came = bench.scenario();
        assertEquals("reversed-in-parallel", bench.shown().cautions().get(0).id());

        assertTrue(bench.edit(new FlipParts(Set.of("B")), Locale.ENGLISH).isEmpty());
        assertTrue(bench.shown().cautions().stream().noneMatch(it -> it.id().equals("reversed-in-parallel")));
        assertFalse(bench.isAsItCame());
        bench.undo();
        assertEquals(came, bench.scenario());
        bench.redo();
        bench.asItCame("back");
        assertEquals(came, bench.scenario());
        assertTrue(bench.undoable().isPresent());
    }

    @Test
    void cure_theOneThatIsOffered_takesItsCautionAway() {
        LiveBench bench = open("side-by-side-one-reversed");
        var caution = bench.shown().cautions().get(0);

        bench.cure(bench.cures(caution).get(0), Locale.GERMAN);

        assertTrue(bench.shown().cautions().stream().noneMatch(it -> it.id().equals(caution.id())));
    }

    @Test
    void edit_anAbsurdValue_isRefusedInWordsAndChangesNothing() {
        LiveBench bench = open("two-cells-side-by-side");
        Scenario before = bench.scenario();

        var against = bench.edit(SetPartKeys.set("coil", "ohm", -1.0), Locale.ENGLISH);

        assertFalse(against.isEmpty());
        assertEquals(before, bench.scenario());
    }

    @Test
    void time_atSixtyTimes_passesWithTheButtonAsItIs() {
        LiveBench bench = open("two-cells-side-by-side");
        bench.time().setSpeed(Speed.SIXTY);
        bench.hold(true);
        bench.time().go();
        for (int i = 0; i < 10; i++) {
            nanos += 100_000_000;
            bench.time().tick();
        }
        bench.time().pause();

        assertEquals(60, bench.time().now().timeS(), 1e-6);
        assertEquals(1, bench.time().now().presses());
        double warm = bench.shown().readings().cells().get(0).restV();
        bench.time().turnTo(0);
        assertTrue(bench.shown().readings().cells().get(0).restV() > warm);
        bench.time().startOver();
        assertTrue(bench.time().course().isEmpty());
    }

    @Test
    void runDown_endsAtACutOff() {
        LiveBench bench = open("two-cells-side-by-side");

        bench.time().runDown(state -> {}).finish();

        assertTrue(bench.time().halt().isPresent());
        assertTrue(bench.time().now().timeS() > 600);
        assertTrue(bench.time().course().isPresent());
    }

    @Test
    void runDown_calledOff_standsWhereItHadCome() {
        LiveBench bench = open("two-cells-side-by-side");
        List<RunState> heard = new ArrayList<>();
        Work work = bench.time().runDown(heard::add);
        for (int i = 0; i < 20; i++) {
            work.more();
        }
        assertEquals(0, bench.time().now().timeS());

        work.callOff();

        assertTrue(work.isOver());
        assertEquals(300, bench.time().now().timeS(), 1e-6);
        assertEquals(300, heard.get(heard.size() - 1).timeS(), 1e-6);
        assertEquals(RunEnd.CANCELLED, bench.time().halt().orElseThrow().end().orElseThrow());
    }

    @Test
    void runDown_overtakenByAnEdit_leavesTheBenchAsItIs() {
        LiveBench bench = open("two-cells-side-by-side");
        Work work = bench.time().runDown(state -> {});
        work.more();

        bench.edit(new FlipParts(Set.of("B")), Locale.ENGLISH);

        assertTrue(work.isOver());
        work.callOff();
        assertEquals(0, bench.time().now().timeS());
        assertTrue(bench.time().halt().isEmpty());
    }

    @Test
    void changes_ofATurnedCell_sayWhatWasDoneAndWhatCameOfIt() {
        LiveBench bench = open("side-by-side-one-reversed");
        assertTrue(bench.changes().isEmpty());

        bench.edit(new FlipParts(Set.of("B")), Locale.ENGLISH);

        Comparison changes = bench.changes().orElseThrow();
        assertEquals(List.of("B"), turned(changes));
        assertEquals("reversed-in-parallel", changes.outcome().gone().get(0).id());
        assertEquals(
                Assessment.of(bench.scenario(), CatalogueLoader.builtIn())
                        .bench()
                        .fired()
                        .pack()
                        .givenW(),
                changes.outcome().rows().stream()
                        .filter(row -> row.quantity() == Outcome.Quantity.GIVEN)
                        .findFirst()
                        .orElseThrow()
                        .is());
        bench.undo();
        assertTrue(bench.changes().isEmpty());
    }

    /** What only time shows is not new because nobody has looked ahead on the bench as it came. */
    @Test
    void changes_beforeAndAfterLookingAhead_speakOfTheSameCautions() {
        LiveBench bench = open("two-cells-side-by-side");
        bench.edit(SetPartKeys.set("coil", "ohm", 0.99), Locale.ENGLISH);
        bench.lookAhead().finish();
        assertEquals(List.of(), bench.changes().orElseThrow().outcome().come());

        LiveBench patient = open("two-cells-side-by-side");
        patient.lookAhead().finish();
        patient.edit(SetPartKeys.set("coil", "ohm", 0.99), Locale.ENGLISH);
        assertEquals(List.of(), patient.changes().orElseThrow().outcome().gone());
        patient.lookAhead().finish();
        assertEquals(List.of(), patient.changes().orElseThrow().outcome().gone());
    }

    private static List<String> turned(Comparison changes) {
        return changes.build().stream()
                .filter(BuildDifference.Turned.class::isInstance)
                .map(it -> ((BuildDifference.Turned) it).first().id())
                .toList();
    }

    @Test
    void lookAhead_addsWhatOnlyTimeShows() {
        LiveBench bench = open("side-by-side-one-reversed");
        Assessment window =
                Assessment.of(bench.scenario(), CatalogueLoader.builtIn()).lookingAhead();

        bench.lookAhead().finish();

        assertEquals(window.cautions(), bench.shown().cautions());
    }

    @Test
    void undo_toABenchThatWasLookedAhead_tellsAtOnceWhatTimeShows() {
        LiveBench bench = open("two-in-a-row");
        bench.lookAhead().finish();
        Assessment looked = bench.shown();

        bench.edit(new FlipParts(Set.of("B")), Locale.ENGLISH);
        assertFalse(bench.isForeseen());
        bench.undo();

        assertTrue(bench.isForeseen());
        assertEquals(looked.cautions(), bench.shown().cautions());
        assertEquals(looked.readings(), bench.shown().readings());
    }
}
