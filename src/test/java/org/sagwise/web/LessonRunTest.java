package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Sureness;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.web.engine.LiveBench;
import org.sagwise.web.lesson.Keeper;
import org.sagwise.web.lesson.LessonBook;
import org.sagwise.web.lesson.LessonRun;

class LessonRunTest {

    private final Map<String, String> kept = new HashMap<>();

    private final Keeper keeper = new Keeper() {
        @Override
        public Optional<String> kept(String name) {
            return Optional.ofNullable(kept.get(name));
        }

        @Override
        public void keep(String name, String text) {
            kept.put(name, text);
        }
    };

    private LiveBench bench;

    private LessonRun begin(String id) throws IOException {
        Lesson lesson = LessonFixture.builtIn(id);
        bench = LiveBench.of(
                lesson.benches().get(lesson.first()).scenario(), LessonFixture.CATALOGUE, System::nanoTime);
        LessonBook book = new LessonBook(keeper);
        List<Lesson> begun = book.begun(LessonReader.bare(LessonFixture.CATALOGUE));
        book.keep(id, LessonBundle.write(LessonLibrary.source(id)));
        return new LessonRun(lesson, bench, book, begun, Locale.ENGLISH, 7, System::nanoTime);
    }

    /** Does a step as a learner does it on the page: by what the page offers. */
    private void solve(LessonRun run) {
        Step step = run.player().step();
        if (step instanceof Step.Choose choose) {
            run.choose(choose.right());
            if (run.player().isAskingHowSure()) {
                assertTrue(run.isAsking());
                run.sure(Sureness.SURE);
            }
        } else if (step instanceof Step.Estimate estimate) {
            run.type(run.player().read(estimate.expected()).orElseThrow());
        } else if (step instanceof Step.Measure measure) {
            bench.hold(true);
            run.look();
            run.type(run.player().read(measure.reading()).orElseThrow());
            bench.hold(false);
            run.look();
        } else if (step instanceof Step.Do) {
            for (Edit move : step.solution()) {
                assertEquals(List.of(), bench.edit(move, Locale.ENGLISH));
                bench.hold(bench.scenario().fired());
                run.look();
            }
        }
        run.next();
    }

    @Test
    void run_everyStepAsItsAuthorMeansIt_comesToTheSummaryWithAllMet() throws IOException {
        for (String id :
                Set.of("00-hands-on", "04-side-by-side", "13-smallest-empties-first", "15-shorts-and-guards")) {
            LessonRun run = begin(id);
            int steps = run.player().lesson().steps().size();
            while (run.recall().isPresent()) {
                run.next();
            }
            for (int i = 0; i < steps; i++) {
                assertEquals(i, run.player().at(), id);
                solve(run);
            }
            assertTrue(run.isOver(), id);
            assertTrue(run.player().summary().stream().allMatch(it -> it.met()), id);
        }
    }

    @Test
    void ask_beforeAnAnswer_locksAndVeils() throws IOException {
        LessonRun run = begin("04-side-by-side");
        run.next();

        assertTrue(run.isAsking());
        run.next();
        assertEquals(1, run.player().at());
        run.choose(0);
        run.sure(Sureness.GUESS);
        assertFalse(run.isAsking());
    }

    @Test
    void begin_whereSomebodyLeftIt_goesOnThere() throws IOException {
        LessonRun first = begin("04-side-by-side");
        for (int i = 0; i < 3; i++) {
            solve(first);
        }

        LessonRun again = begin("04-side-by-side");

        assertEquals(3, again.player().at());
        assertEquals(first.player().allAnswers(), again.player().allAnswers());
        assertEquals(first.player().shuffle(), again.player().shuffle());
        assertEquals(again.player().bench(), bench.scenario());
        again.restart(9);
        assertEquals(0, again.player().at());
        assertTrue(again.player().allAnswers().stream().allMatch(Answers::isOpen));
    }

    @Test
    void begin_afterAnotherLesson_bringsItsQuestionsBack() throws IOException {
        LessonRun first = begin("04-side-by-side");
        run(first);

        LessonRun next = begin("05-end-to-end");

        assertEquals(1, next.begun().size());
        assertEquals(
                "04-side-by-side",
                next.recall().orElseThrow().question().item().lesson().id());
        next.choose(next.recall().orElseThrow().question().right());
        assertTrue(next.recall().orElseThrow().isMet());
        next.speak(Locale.GERMAN);
        assertTrue(next.recall().orElseThrow().isMet());
        next.next();
        next.next();
        assertEquals(Optional.empty(), next.recall());
        assertTrue(kept.get("sagwise.progress").contains("recalled"));
    }

    private void run(LessonRun run) {
        while (!run.isOver()) {
            solve(run);
        }
    }

    @Test
    void speak_anotherLanguage_keepsWhatWasDone() throws IOException {
        LessonRun run = begin("04-side-by-side");
        run.next();
        run.choose(0);

        run.speak(Locale.GERMAN);

        assertEquals(Locale.GERMAN, run.player().locale());
        assertEquals(0, run.player().answers().choice().orElse(-1));
        assertEquals("Eine Zelle arbeitet, eine wartet", bench.scenario().title());
        assertFalse(run.look());
    }

    @Test
    void showSolution_ofATask_laysTheBenchOutAndCanBeTakenBack() throws IOException {
        LessonRun run = begin("04-side-by-side");
        for (int i = 0; i < 3; i++) {
            solve(run);
        }
        var before = bench.scenario();

        run.showSolution("Show me");
        assertEquals(Answers.State.SHOWN, run.player().answers().state());
        assertEquals(before.links().size() + 2, bench.scenario().links().size());
        bench.undo();
        run.look();
        assertEquals(before, bench.scenario());
        run.reset("Again");
        assertTrue(run.player().answers().isOpen());
    }
}
