package org.sagwise.ui.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.ui.shell.Arrangement.CurvesPlace;
import org.sagwise.ui.shell.Arrangement.NoticePlace;
import org.sagwise.ui.shell.Arrangement.Room;
import org.sagwise.ui.shell.Arrangement.Wanted;
import org.sagwise.ui.shell.Arrangement.Word;

class ArrangementTest {

    private static final Room LAPTOP = new Room(1280, 720, 1);
    private static final Room LARGE = new Room(1920, 1080, 1);

    /** A bench of one's own, with both columns and the curves. */
    private static final Wanted BENCH = new Wanted(false, false, true, false, true, false, true, Word.NONE, false);

    private static Wanted lesson(boolean twoBenches) {
        return new Wanted(true, twoBenches, true, false, true, false, false, Word.NONE, false);
    }

    @Test
    void of_laptop_showsOneColumnAndTheNoticeInIt() {
        assertEquals(
                new Arrangement(true, false, NoticePlace.UNDER_LEFT, CurvesPlace.FOOT, false),
                Arrangement.of(BENCH, LAPTOP));
        Wanted closed = new Wanted(false, false, false, false, true, false, true, Word.NONE, false);
        assertEquals(
                new Arrangement(false, true, NoticePlace.UNDER_READINGS, CurvesPlace.FOOT, false),
                Arrangement.of(closed, LAPTOP));
    }

    @Test
    void of_laptopWhereBothAreAskedFor_showsBoth() {
        Wanted both = new Wanted(false, false, true, false, true, true, true, Word.NONE, false);

        assertTrue(Arrangement.of(both, LAPTOP).left());
        assertTrue(Arrangement.of(both, LAPTOP).side());
        assertFalse(Arrangement.of(both, new Room(1280, 720, 1.5)).left());
    }

    @Test
    void of_largeWindow_showsBothColumns() {
        assertEquals(
                new Arrangement(true, true, NoticePlace.UNDER_READINGS, CurvesPlace.FOOT, true),
                Arrangement.of(BENCH, LARGE));
    }

    @Test
    void of_noColumnWanted_leavesTheBenchAlone() {
        Wanted none = new Wanted(false, false, false, false, false, false, false, Word.NONE, false);

        assertEquals(
                new Arrangement(false, false, NoticePlace.FOOT, CurvesPlace.NOWHERE, false),
                Arrangement.of(none, LAPTOP));
    }

    @Test
    void of_largeText_leavesOutTheLeftColumnAndMovesTheNotice() {
        Arrangement arrangement = Arrangement.of(BENCH, new Room(1280, 720, 1.5));

        assertFalse(arrangement.left());
        assertTrue(arrangement.side());
        assertEquals(NoticePlace.FOOT, arrangement.notice());
    }

    @Test
    void of_largeTextAndTurnOfTheLeftColumn_leavesOutTheReadings() {
        Wanted building = new Wanted(false, false, true, true, true, false, false, Word.NONE, false);

        assertTrue(Arrangement.of(building, new Room(1280, 720, 1.5)).left());
        assertFalse(Arrangement.of(building, new Room(1280, 720, 1.5)).side());
        assertTrue(Arrangement.of(building, LARGE).side());
    }

    @Test
    void of_lessonInNarrowWindow_keepsItsColumnAndLeavesOutTheReadings() {
        Arrangement arrangement = Arrangement.of(lesson(false), new Room(900, 720, 1));

        assertTrue(arrangement.left());
        assertFalse(arrangement.side());
    }

    @Test
    void of_twoBenches_needMoreWidthThanOneColumn() {
        assertFalse(Arrangement.of(lesson(true), LAPTOP).side());
        assertTrue(Arrangement.of(lesson(true), LARGE).side());
    }

    @Test
    void of_projected_showsTheBenchAlone() {
        Wanted projected = new Wanted(false, false, true, false, true, true, false, Word.NONE, true);

        assertEquals(
                new Arrangement(false, false, NoticePlace.FOOT, CurvesPlace.NOWHERE, false),
                Arrangement.of(projected, LAPTOP));
    }

    @Test
    void of_largeWindow_givesNamesOnTheShelfOneLine() {
        assertTrue(Arrangement.of(BENCH, LARGE).roomy());
        assertFalse(Arrangement.of(BENCH, new Room(1920, 1080, 1.5)).roomy());
    }

    @Test
    void of_lowWindow_drawsCurvesInsteadOfTheBench() {
        assertEquals(
                CurvesPlace.INSTEAD_OF_BENCH,
                Arrangement.of(BENCH, new Room(1280, 500, 1)).curves());
    }

    @Test
    void of_graveHalt_letsCurvesWaitUnlessThereIsHeightForBoth() {
        Wanted grave = new Wanted(false, false, true, false, true, false, true, Word.GRAVE, false);

        assertEquals(CurvesPlace.NOWHERE, Arrangement.of(grave, LAPTOP).curves());
        assertEquals(CurvesPlace.FOOT, Arrangement.of(grave, LARGE).curves());
    }

    @Test
    void of_endOfARun_isReadBeforeCurvesTakeThePlaceOfTheBench() {
        Wanted ended = new Wanted(false, false, true, false, true, false, true, Word.ENDED, false);

        assertEquals(
                CurvesPlace.NOWHERE,
                Arrangement.of(ended, new Room(1280, 500, 1)).curves());
        assertEquals(CurvesPlace.FOOT, Arrangement.of(ended, LAPTOP).curves());
    }
}
