package org.sagwise.ui.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.ui.shell.Arrangement.CurvesPlace;
import org.sagwise.ui.shell.Arrangement.Room;
import org.sagwise.ui.shell.Arrangement.Wanted;

class ArrangementTest {

    private static final Room WIDE = new Room(1280, 720, 1);

    @Test
    void of_wideWindow_showsBothColumns() {
        Arrangement arrangement = Arrangement.of(bench(), WIDE);

        assertEquals(new Arrangement(true, true, true, CurvesPlace.FOOT, false), arrangement);
    }

    @Test
    void of_largeText_leavesOutTheLeftColumnAndMovesTheNotice() {
        Arrangement arrangement = Arrangement.of(bench(), new Room(1280, 720, 1.5));

        assertFalse(arrangement.left());
        assertTrue(arrangement.side());
        assertFalse(arrangement.noticeBeside());
    }

    @Test
    void of_largeTextAndTurnOfTheLeftColumn_leavesOutTheReadings() {
        Wanted building = new Wanted(false, false, true, true, false, false, false);

        assertTrue(Arrangement.of(building, new Room(1280, 720, 1.5)).left());
        assertFalse(Arrangement.of(building, new Room(1280, 720, 1.5)).side());
        assertTrue(Arrangement.of(building, WIDE).side());
    }

    @Test
    void of_lessonInNarrowWindow_keepsItsColumnAndLeavesOutTheReadings() {
        Wanted lesson = new Wanted(true, false, false, false, false, false, false);
        Arrangement arrangement = Arrangement.of(lesson, new Room(900, 720, 1));

        assertTrue(arrangement.left());
        assertFalse(arrangement.side());
    }

    @Test
    void of_twoBenches_needMoreWidthThanThreeColumns() {
        Wanted comparing = new Wanted(true, true, true, false, false, false, false);

        assertFalse(Arrangement.of(comparing, WIDE).side());
        assertTrue(Arrangement.of(comparing, new Room(1920, 1080, 1)).side());
    }

    @Test
    void of_projected_showsTheBenchAlone() {
        Wanted projected = new Wanted(false, false, true, false, false, false, true);

        assertEquals(new Arrangement(false, false, false, CurvesPlace.NOWHERE, false), Arrangement.of(projected, WIDE));
    }

    @Test
    void of_largeWindow_givesNamesOnTheShelfOneLine() {
        assertTrue(Arrangement.of(bench(), new Room(1920, 1080, 1)).roomy());
        assertFalse(Arrangement.of(bench(), new Room(1920, 1080, 1.5)).roomy());
    }

    @Test
    void of_lowWindow_drawsCurvesInsteadOfTheBench() {
        assertEquals(
                CurvesPlace.INSTEAD_OF_BENCH,
                Arrangement.of(bench(), new Room(1280, 500, 1)).curves());
    }

    @Test
    void of_graveHalt_letsCurvesWaitUnlessThereIsHeightForBoth() {
        Wanted grave = new Wanted(false, false, true, false, true, true, false);

        assertEquals(CurvesPlace.NOWHERE, Arrangement.of(grave, WIDE).curves());
        assertEquals(
                CurvesPlace.FOOT, Arrangement.of(grave, new Room(1920, 1080, 1)).curves());
    }

    /** A bench of one's own, with both columns and the curves. */
    private static Wanted bench() {
        return new Wanted(false, false, true, false, true, false, false);
    }
}
