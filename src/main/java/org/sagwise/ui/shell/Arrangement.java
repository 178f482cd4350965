package org.sagwise.ui.shell;

/**
 * Where the pieces of the window go in the room there is.
 *
 * <p>The bench comes first: unless the window is very wide or somebody asks for both, the column at
 * the left and the readings take turns. Where there is little room for the size of text, the notice
 * lies across the foot of the window, and the curves wait until word of how a run ended has been
 * read. A lesson needs its column, and the readings give way to it. On a projector there is only
 * what a class can read.
 *
 * @param left whether the column at the left is there
 * @param side whether the column with the readings is there
 * @param notice where the notice stands
 * @param curves where the curves are drawn
 * @param roomy whether the column at the left may be wider than it must
 */
record Arrangement(boolean left, boolean side, NoticePlace notice, CurvesPlace curves, boolean roomy) {

    /** Where it says that this is a teaching model. */
    enum NoticePlace {
        FOOT,
        UNDER_READINGS,
        UNDER_LEFT
    }

    /** Where the curves are drawn. */
    enum CurvesPlace {
        NOWHERE,
        FOOT,
        /** Where there is no height for both: in the place of bench and staircase. */
        INSTEAD_OF_BENCH
    }

    /** What there is to be read on the bench about the end of a run, which curves in its place would hide. */
    enum Word {
        NONE,
        ENDED,
        /** A cell vents. */
        GRAVE
    }

    /**
     * What is to be shown.
     *
     * @param lesson whether a lesson runs
     * @param twoBenches whether the lesson compares two benches
     * @param left whether the column at the left is wanted
     * @param leftFirst whether that column goes before the readings where there is no room for both
     * @param side whether the readings are wanted
     * @param both whether both columns are wanted at the expense of the bench
     * @param curves whether the curves are wanted
     * @param word what there is to be read on the bench about the end of a run
     * @param projected whether a class looks on
     */
    record Wanted(
            boolean lesson,
            boolean twoBenches,
            boolean left,
            boolean leftFirst,
            boolean side,
            boolean both,
            boolean curves,
            Word word,
            boolean projected) {}

    /**
     * The room there is.
     *
     * @param width in pixels
     * @param height in pixels
     * @param textScale size of text, 1 for the usual one
     */
    record Room(double width, double height, double textScale) {

        private boolean isWide(double least) {
            return width >= least * textScale;
        }

        private boolean isHigh(double least) {
            return height >= least * textScale;
        }
    }

    /** Width that two benches and two columns need at the usual size of text, in pixels. */
    private static final double LEAST_FOR_TWO_BENCHES = 1500;

    /** Width from which three columns leave the bench most of it at the usual size of text, in pixels. */
    private static final double ENOUGH_FOR_THREE_COLUMNS = 1500;

    /** Width that three columns need at the usual size of text, in pixels. */
    private static final double LEAST_FOR_THREE_COLUMNS = 960;

    /** Width from which names on the shelf get a line of their own, in pixels. */
    private static final double LEAST_FOR_WIDE_COLUMNS = 1500;

    /** Height that curves and a card about a cell that vents need together, in pixels. */
    private static final double LEAST_FOR_BOTH = 820;

    /** Height from which curves lie at the foot, in pixels. */
    private static final double LEAST_FOR_CURVES = 560;

    static Arrangement of(Wanted wanted, Room room) {
        boolean wide = room.isWide(LEAST_FOR_THREE_COLUMNS);
        boolean crowded = wanted.twoBenches() && !room.isWide(LEAST_FOR_TWO_BENCHES);
        boolean alone = wanted.projected() || crowded;
        boolean chosen = wanted.left() && !wanted.projected() && (wide || wanted.leftFirst());
        boolean left = wanted.lesson() || chosen;
        boolean three = room.isWide(ENOUGH_FOR_THREE_COLUMNS) || wide && wanted.both();
        boolean side = wanted.side() && !alone && (three || !left);
        return new Arrangement(
                left,
                side,
                notice(left, side, wide && !alone),
                curves(wanted, room),
                room.isWide(LEAST_FOR_WIDE_COLUMNS));
    }

    private static NoticePlace notice(boolean left, boolean side, boolean roomy) {
        if (!roomy || !left && !side) {
            return NoticePlace.FOOT;
        }
        return side ? NoticePlace.UNDER_READINGS : NoticePlace.UNDER_LEFT;
    }

    private static CurvesPlace curves(Wanted wanted, Room room) {
        double least = wanted.word() == Word.GRAVE ? LEAST_FOR_BOTH : LEAST_FOR_CURVES;
        if (!wanted.curves() || wanted.word() != Word.NONE && !room.isHigh(least)) {
            return CurvesPlace.NOWHERE;
        }
        return room.isHigh(LEAST_FOR_CURVES) ? CurvesPlace.FOOT : CurvesPlace.INSTEAD_OF_BENCH;
    }
}
