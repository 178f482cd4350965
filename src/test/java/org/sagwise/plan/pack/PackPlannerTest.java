package org.sagwise.plan.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pack.PackChoice.Verdict;
import org.sagwise.plan.pack.PackPlan.Why;
import org.sagwise.quantity.QuantityFormat;

class PackPlannerTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static PackCell model(String id) {
        return PackCell.of(CATALOGUE.models(PartKind.CELL).find(id).orElseThrow());
    }

    private static PackPlan plan(PackWish wish, PackCell... cells) {
        return PackPlanner.plan(wish, List.of(cells), CATALOGUE, Locale.ENGLISH, PackPlanner.Progress.NONE);
    }

    private static PackWish coil(double ohm, int cells) {
        return new PackWish(OptionalDouble.empty(), OptionalDouble.of(ohm), false, OptionalDouble.empty(), cells);
    }

    private static PackWish watts(double watts, double lastsS, int cells) {
        OptionalDouble lasts = lastsS > 0 ? OptionalDouble.of(lastsS) : OptionalDouble.empty();
        return new PackWish(OptionalDouble.of(watts), OptionalDouble.empty(), false, lasts, cells);
    }

    private static PackChoice layout(PackPlan plan, String layout) {
        return plan.choices().stream()
                .filter(choice -> choice.layout().equals(layout))
                .findFirst()
                .orElseThrow();
    }

    private static String answer(PackPlan plan) {
        return PackWords.byId(QuantityFormat.forPeople(Locale.ENGLISH)).answer(plan);
    }

    /**
     * Closed form of the textbook: two ideal cells side by side on 1 Ω have 4.2²/1 = 17.64 W, two in a row on 4 Ω 8.4²/4 =
     * the same; each cell gives 2.1 A in both, so both last equally long. Cells of 100 mΩ, so that contacts do not decide
     * who gives how much, and the path of these benches come in as E²·R/(R + r)².
     */
    @Test
    void plan_twoLikeCells_haveTheWattsAndLifeOfTheClosedForm() {
        Keys like = Keys.of("internal_mohm", 100, "capacity_mAh", 500, "limit_A", 20);
        PackCell cell = PackCell.endless("like", like, like);
        PackChoice beside = layout(plan(coil(1, 2), cell), "2p");
        PackChoice inARow = layout(plan(coil(4, 2), cell), "2s");

        double besideR = 0.05 + pathOhm(beside);
        double inARowR = 0.2 + pathOhm(inARow);
        assertEquals(17.64 / Math.pow(1 + besideR, 2), beside.full().coilW(), 0.01);
        assertEquals(17.64 / Math.pow(1 + inARowR / 4, 2), inARow.full().coilW(), 0.01);
        assertEquals(2.1, beside.full().cellA() * (1 + besideR), 0.05 * 2.1);
        assertEquals(2.1, inARow.full().cellA() * (1 + inARowR / 4), 0.001);
        double held = beside.course().orElseThrow().firedS();
        assertEquals(held, inARow.course().orElseThrow().firedS(), 0.05 * held);
    }

    private static double pathOhm(PackChoice choice) {
        return choice.full().jointHeatW() / Math.pow(choice.full().packA(), 2);
    }

    @Test
    void plan_sixteenBays_looksAtSixteenLayouts() {
        assertEquals(16, PackPlanner.layouts(16).size());
        assertEquals(8, PackPlanner.layouts(4).size());
        assertEquals(1, PackPlanner.layouts(1).size());
    }

    @Test
    void plan_watts_areThoseWishedAndWireAndFuseBearThem() {
        PackPlan plan = plan(watts(30, 0, 2), model("inr18650-2500-20A"));

        assertEquals(3, plan.choices().size());
        for (PackChoice choice : plan.choices()) {
            assertEquals(30, choice.full().coilW(), 0.3);
            assertTrue(choice.fuseA().orElse(99) >= choice.full().packA());
            assertTrue(choice.cautions().stream()
                    .noneMatch(
                            it -> it.id().startsWith("jumper-over") || it.id().equals("fuse-too-large")));
        }
    }

    @Test
    void plan_moreThanCellsGive_saysWhyAndWhatIsNearest() {
        PackPlan plan = plan(watts(120, 0, 1), model("inr18650-2500-20A"));

        assertTrue(plan.best().isEmpty());
        assertTrue(plan.notRun() > 0);
        assertTrue(answer(plan).startsWith("No layout of these cells gives 120 W within their limits"), answer(plan));
        assertTrue(answer(plan).contains("The nearest is"), answer(plan));
    }

    @Test
    void plan_moreThanAnyCoilTakes_saysHowMuchThereIs() {
        PackPlan plan = plan(watts(500, 0, 1), model("imr18350-700-7A"));

        assertEquals(Why.TOO_MANY_WATTS, plan.refused().get(0).why());
        assertTrue(plan.mostW() > 20 && plan.mostW() < 100, "" + plan.mostW());
        assertTrue(answer(plan).contains("The most that one of them can give"), answer(plan));
    }

    @Test
    void plan_longerThanCellsLast_isTooShort() {
        PackPlan plan = plan(watts(15, 100 * 3600, 1), model("inr18650-2500-20A"));

        assertEquals(Verdict.TOO_SHORT, plan.choices().get(0).verdict());
        assertTrue(answer(plan).contains("for 100 h within their limits"), answer(plan));
    }

    /** A board asks for more current from emptier cells: 40 W / (0.92 · 3.2 V) = 13.6 A at its cut-off. */
    @Test
    void plan_regulated_countsTheCurrentOfEmptyCells() {
        PackWish wish = new PackWish(OptionalDouble.of(40), OptionalDouble.empty(), true, OptionalDouble.empty(), 1);
        PackChoice choice = plan(wish, model("inr18650-2000-30A")).choices().get(0);

        assertEquals(40, choice.half().coilW(), 0.4);
        assertEquals(13.6 / 30, choice.course().orElseThrow().peakShare(), 0.01);
        assertTrue(choice.share() > choice.full().share());
    }

    @Test
    void plan_calledOff_keepsWhatThereIsAndSaysSo() {
        PackPlan plan = PackPlanner.plan(
                watts(15, 0, 4),
                List.of(model("inr18650-2500-20A")),
                CATALOGUE,
                Locale.ENGLISH,
                (done, all) -> done < 1);

        assertEquals(1, plan.choices().size());
        assertFalse(plan.isComplete());
    }

    private static OwnCell own(String mark, int capacity, double resistance) {
        OwnCell cell = OwnCell.of(mark, "inr18650-2500-20A");
        return cell.with(
                CellMeasurement.of(Keys.of("on", "2026-09-11", "capacity_mAh", capacity, "internal_mohm", resistance)));
    }

    private static List<String> marks(PackCell cell, int count) {
        return cell.take(count).orElseThrow().stream()
                .map(keys -> keys.text("mark").orElseThrow())
                .toList();
    }

    /**
     * Reckoned by hand: c and d differ by 0.4 % of capacity but by 40 % of resistance, a and b by 0.8 % and 5 %; half
     * the one and the whole of the other make a and b the better pair.
     */
    @Test
    void take_ownCells_areThoseThatGoTogetherAndNoMoreThanThereAre() {
        Drawer drawer = new Drawer(
                List.of(
                        own("a", 2500, 20),
                        own("c", 2390, 20),
                        own("b", 2480, 21),
                        own("d", 2380, 30),
                        OwnCell.of("new", "inr18650-2500-20A"),
                        own("old", 1500, 40)),
                Optional.empty());
        PackCell cell = PackCell.of(drawer, CATALOGUE).get(0);

        assertEquals(List.of("a", "b"), marks(cell, 2));
        assertEquals(List.of("a"), marks(cell, 1));
        assertTrue(cell.take(5).isEmpty());
        assertEquals(
                List.of("new", "old"),
                cell.leftOut().keySet().stream().map(OwnCell::mark).toList());
        String notes = String.join(
                " ",
                PackWords.byId(QuantityFormat.forPeople(Locale.ENGLISH)).notes(plan(watts(15, 0, 1), cell), CATALOGUE));
        assertTrue(notes.contains("new: its capacity was not measured yet. old: worn"), notes);
    }

    /** A married pair is never torn: it comes whole or not at all. */
    @Test
    void take_marriedCells_comeAsAWholeSetOnly() {
        Drawer drawer = new Drawer(
                        List.of(own("a", 2500, 20), own("b", 2495, 20), own("c", 2400, 25)), Optional.empty())
                .marry("pair", List.of("a", "b"), Optional.empty());
        PackCell cell = PackCell.of(drawer, CATALOGUE).get(0);

        assertEquals(List.of("a", "b"), marks(cell, 2));
        assertEquals(List.of("c"), marks(cell, 1));
        assertTrue(cell.take(3).isEmpty());
    }
}
