package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.part.Catalogue;
import org.sagwise.report.compare.Comparison;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.CopyBoard;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Three stories of a forum, rebuilt on an empty bench as a helper would: by hand, in few enough
 * steps, down to the post. What comes of it is the circuit of the story's file.
 */
class StoriesGuiTest extends BenchInteractionGuiTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    /** One step, such as a search, a drag, a click on two terminals or a value, takes about 4 s. */
    private static final int MOST_STEPS = 45;

    private int steps;

    @Override
    void drag(String good, double x, double y) {
        super.drag(good, x, y);
        steps += 2;
    }

    @Override
    void join(String one, String other) {
        super.join(one, other);
        steps++;
    }

    @Override
    void open(String part) {
        super.open(part);
        steps++;
    }

    @Override
    void fill(String field, String value) {
        super.fill(field, value);
        steps++;
    }

    private void click(String id) {
        robot().clickOn("#" + id);
        settle();
        steps++;
    }

    private void layParts() {
        robot().clickOn("#tab-shelf");
        drag(CELL, 0.25, 0.5);
        drag(CELL, 0.45, 0.5);
        drag(BUTTON, 0.65, 0.25);
        drag(COIL, 0.85, 0.6);
    }

    private void name(String title) {
        robot().push(KeyCode.F2);
        settle();
        robot().clickOn("#title-field").push(KeyCode.CONTROL, KeyCode.A).write(title);
        robot().clickOn("#title-dialog-ok_done");
        settle();
        steps++;
    }

    private Scenario built() {
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.C);
        settle();
        AtomicReference<String> text = new AtomicReference<>();
        robot().interact(() -> text.set(CopyBoard.text().orElseThrow()));
        return ShareText.read(text.get(), new ScenarioReader(CATALOGUE))
                .scenario()
                .orElseThrow();
    }

    private static Scenario story(String name) {
        Path file = Path.of("src/test/resources/stories", name + ".sagwise.json");
        return new ScenarioReader(CATALOGUE).read(file).scenario().orElseThrow();
    }

    /** The same cautions, and numbers that a reader would call the same. */
    private void comesOutAs(String name) {
        Scenario built = built();
        Assessment here = Assessment.of(built, CATALOGUE);
        Assessment there = Assessment.of(story(name), CATALOGUE);
        Comparison comparison = Comparison.of(here, there);
        assertEquals(
                0,
                comparison.outcome().gone().size(),
                comparison.outcome().gone().toString());
        assertEquals(
                0,
                comparison.outcome().come().size(),
                comparison.outcome().come().toString());
        for (var row : comparison.outcome().rows()) {
            assertEquals(row.is(), row.was(), 0.05 * Math.abs(row.is()) + 1e-3, row.toString());
        }
        assertTrue(steps <= MOST_STEPS, steps + " steps");
    }

    private void postTells(String words) throws Exception {
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.E);
        steps++;
        settle();
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> ((TextArea) node("post-preview")).getText().contains(words));
    }

    @Test
    void reversedInParallel_byHand_isTheStorysCircuit() throws Exception {
        layParts();
        click("join-contact");
        join("A-plus", "B-plus");
        join("A-minus", "B-minus");
        join("A-plus", "fire-1");
        join("fire-2", "coil-1");
        join("coil-2", "A-minus");
        for (String cell : new String[] {"A", "B"}) {
            open(cell);
            fill("charge", "0.9");
        }
        open("coil");
        fill("ohm", "0.6");
        robot().clickOn("#part-B").push(KeyCode.F);
        settle();
        name("My two-cell tube gets hot in my bag");

        Scenario built = built();
        Assessment here = Assessment.of(built, CATALOGUE);
        assertEquals("reversed-in-parallel", here.cautions().get(0).id());
        assertEquals("B", here.cautions().get(0).parts().get(0));
        assertTrue(steps <= MOST_STEPS, steps + " steps");
        postTells("Turn cell B");
    }

    @Test
    void newBesideWornInSeries_byHand_isTheStorysCircuit() throws Exception {
        robot().clickOn("#tab-shelf");
        layParts();
        click("join-contact");
        join("A-minus", "B-plus");
        join("A-plus", "fire-1");
        join("fire-2", "coil-1");
        join("coil-2", "B-minus");
        open("B");
        fill("health", "60 %");
        open("coil");
        fill("ohm", "1.2");
        name("One cell of my pair is always flat");

        Assessment here = Assessment.of(built(), CATALOGUE);
        assertEquals("mixed-health", here.cautions().get(0).id());
        assertTrue(steps <= MOST_STEPS, steps + " steps");
        postTells("Cell B falls to its cut-off");
    }

    @Test
    void thinJumpers_byHand_isTheStorysCircuit() throws Exception {
        layParts();
        click("join-contact");
        join("A-plus", "B-plus");
        join("A-minus", "B-minus");
        click("join-wire");
        join("A-plus", "fire-1");
        join("fire-2", "coil-1");
        join("coil-2", "A-minus");
        for (String end : new String[] {"fire-1", "coil-2"}) {
            robot().interact(() -> node("terminal-" + end).requestFocus());
            robot().push(KeyCode.L).push(KeyCode.ENTER);
            settle();
            steps += 2;
            fill("awg", "26");
            fill("contacts_mohm", "4");
        }
        open("coil");
        fill("ohm", "0.12");
        work("back-limit_W");
        steps++;
        name("Why do the wires in my box smell?");
        comesOutAs("thin-jumpers");
        postTells("AWG or thicker");
    }
}
